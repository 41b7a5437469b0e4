import type { Entry, Project } from '../book/types.ts';
import { showShortDay } from '../time/day.ts';
import { wordsOf } from '../words/words.ts';
import { type Card, machineOf } from './draw-card.ts';

/** The card of an entry: its title and summary, and the first photo that it shows, as it is published. */
export function entryCard(
  entry: Entry,
  project: Project,
  { owner, language, photo }: { owner: string; language: string; photo?: string | undefined },
): Card {
  const { card } = wordsOf(language).log.sharing;
  const phase = project.phases.find(({ id }) => id === entry.phase);
  return {
    over: machineOf(project),
    title: entry.title,
    lines: [entry.summary],
    ...(photo === undefined ? {} : { photo }),
    block: [
      [card.owner, owner],
      [card.document, card.entry(entry.number, project.entries.length)],
      [card.date, showShortDay(entry.date, language)],
      [card.phase, phase?.name ?? entry.phase],
    ],
  };
}

/** Name of the photo that an entry shows first. */
export function firstPhotoOf(entry: Entry): string | undefined {
  const props = entry.components.find(({ name }) => name === 'Photo')?.props;
  const file = props?.find(({ name }) => name === 'file')?.literal;
  return typeof file === 'string' ? file : undefined;
}
