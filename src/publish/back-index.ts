import { entriesAbout } from '../book/entries-about.ts';
import { entriesOfPart } from '../book/entries-of-part.ts';
import type { Entry, Project } from '../book/types.ts';
import type { Addresses } from './address.ts';

export type TermKind = 'phase' | 'system' | 'part' | 'spec' | 'tag';

/** A term of the index: where it is at home, and the entries that tell of it. */
export interface IndexTerm {
  readonly kind: TermKind;
  readonly name: string;
  /** Its own place on the index page. */
  readonly id: string;
  /** A tag has no page but this. */
  readonly href: string | undefined;
  readonly entries: readonly Entry[];
}

/** The terms under one letter, in order. */
export interface IndexLetter {
  readonly letter: string;
  readonly terms: readonly IndexTerm[];
}

/** The index of a project, as at the back of a handbook: every term under its letter, in the order of the language. */
export function backIndex(project: Project, to: Addresses, language: string): IndexLetter[] {
  const { compare } = new Intl.Collator(language, { numeric: true });
  const terms = termsOf(project, to).sort(
    (a, b) => compare(a.name, b.name) || compare(a.kind, b.kind),
  );
  return [...Map.groupBy(terms, ({ name }) => letterOf(name, language))].map(([letter, own]) => ({
    letter,
    terms: own,
  }));
}

function termsOf(project: Project, to: Addresses): IndexTerm[] {
  const ofPart = new Map(project.parts.map(({ id }) => [id, entriesOfPart(project, id)]));
  const ofSpec = new Map(project.specs.map(({ id }) => [id, entriesAbout(project, id)]));
  const term = (
    kind: TermKind,
    key: string,
    name: string,
    entries: readonly Entry[],
    href?: string,
  ) => ({
    ...{ kind, name, id: termId(kind, key), href, entries },
  });
  const tags = [...new Set(project.entries.flatMap((entry) => entry.tags ?? []))];
  const systems = [...new Set(project.parts.map(({ system }) => system))];
  const about = (system: string) => {
    const parts = project.parts.filter((part) => part.system === system);
    const specs = project.specs.filter((spec) => spec.system === system);
    const told = new Set([
      ...parts.flatMap(({ id }) => ofPart.get(id) ?? []),
      ...specs.flatMap(({ id }) => ofSpec.get(id) ?? []),
    ]);
    return project.entries.filter((entry) => told.has(entry));
  };
  return [
    ...project.phases.map(({ id, name }) =>
      term(
        'phase',
        id,
        name,
        project.entries.filter(({ phase }) => phase === id),
        to.phase(project, id),
      ),
    ),
    ...systems.map((system) =>
      term(
        'system',
        system,
        system.replaceAll('-', ' '),
        about(system),
        to.system(project, system),
      ),
    ),
    ...project.parts.map(({ id, name }) =>
      term('part', id, name, ofPart.get(id) ?? [], to.part(project, id)),
    ),
    ...project.specs.map(({ id, name }) =>
      term('spec', id, name, ofSpec.get(id) ?? [], to.spec(project, id)),
    ),
    ...tags.map((tag) =>
      term(
        'tag',
        tag,
        tag,
        project.entries.filter(({ tags: own = [] }) => own.includes(tag)),
      ),
    ),
  ];
}

/** The place of a term on the index page. */
const termId = (kind: TermKind, key: string): string =>
  `${kind}-${key.toLowerCase().replaceAll(/[^\p{L}\p{N}]+/gu, '-')}`;

/** The letter a name stands under: without accents, and all that begins with no letter together. */
function letterOf(name: string, language: string): string {
  const [first = ''] = name.normalize('NFD').toLocaleUpperCase(language);
  return /\p{L}/u.test(first) ? first : '0–9';
}
