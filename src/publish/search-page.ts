import type { Book } from '../book/types.ts';
import { escapeXml } from '../draw/svg.ts';
import { showDay } from '../time/day.ts';
import type { Words } from '../words/words.ts';
import type { Addresses } from './address.ts';
import { sitePages } from './sitemap.ts';

/** What sort of page a result of the search is; each has its words. */
export type PageKind = keyof Words['finding']['kinds'];

/** A page as it is searched: where it is, and what is put at the head of its main part before it is indexed. */
export interface SearchedPage {
  readonly path: string;
  readonly notes: string;
  /** The project that it belongs to, or none. */
  readonly project: string;
}

/** Every page that is searched, with its kind, project and day. Those of ledgers stand for their rows. */
export function searchedPages(book: Book, to: Addresses, language: string): SearchedPage[] {
  return sitePages(book, to).flatMap(({ path, changed }) => {
    const [id = '', room = '', ...below] = path.slice(to.home().length).split('/');
    if (REPEATS.has(room)) return [];
    const project = book.projects.find((one) => one.id === id);
    const facts = [
      ['kind', kindOf(room, below.join('') !== '', project !== undefined)],
      ...(project ? [['project', project.info.name]] : []),
      ...(changed ? [['date', changed]] : []),
    ];
    // A value may hold commas, so each stands on an element of its own.
    const notes = facts.map(
      ([name, value]) => `<i data-pagefind-meta="${escapeXml(`${name}:${value}`)}"></i>`,
    );
    // Whoever looks for a day wants its entry before the ledgers that name the same month a hundred times.
    const day = room === 'log' && changed ? `${showDay(changed, language)} ${changed}` : '';
    const weighty = day && `<p data-pagefind-weight="10">${escapeXml(day)}</p>`;
    return [{ path, notes: notes.join('') + weighty, project: project?.id ?? '' }];
  });
}

/** Rooms of a project that hold a page of this kind for each thing. */
const ROOMS: Readonly<Record<string, PageKind>> = {
  log: 'entry',
  specs: 'spec',
  parts: 'part',
  photos: 'photo',
};

/** Rooms that say again what other pages say. */
const REPEATS = new Set(['index', 'dossier']);

const LEDGERS = new Set(['costs', 'hours', 'budget', 'data', 'marks', 'corrections', 'donors']);

function kindOf(room: string, below: boolean, inProject: boolean): PageKind {
  if (!inProject) return 'about';
  if (LEDGERS.has(room)) return 'ledger';
  return (below && ROOMS[room]) || 'project';
}
