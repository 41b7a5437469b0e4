import type { Project } from '../book/types.ts';
import type { Words } from '../words/words.ts';

/** A number of a machine as anybody may see it. */
export interface ShownMark {
  readonly what: string;
  readonly where: string | undefined;
  readonly machine: string | undefined;
  /** The end of a released number, or that it is not published; `none` where the builder wrote none down. */
  readonly value: string;
}

/** The end of a number, for whoever stands before the machine to compare: four characters, and never more than half. */
export function maskNumber(number: string): string {
  const characters = [...number];
  const shown = Math.min(4, Math.floor(characters.length / 2));
  return `… ${characters.slice(characters.length - shown).join('')}`;
}

/** The numbers that say which machine it is, in the order of project.yaml, none of them whole. */
export function shownMarks(project: Project, words: Words): readonly ShownMark[] {
  return (project.info.identity?.marks ?? []).map(({ what, where, source, value, released }) => ({
    what,
    where,
    machine: sourceName(project, source),
    value: maskedValue(value, released, words.dossier.identity),
  }));
}

function maskedValue(
  value: string | undefined,
  released: boolean,
  { notPublished, notWrittenDown }: Words['dossier']['identity'],
): string {
  if (value === undefined) return notWrittenDown;
  return released ? maskNumber(value) : notPublished;
}

/** The whole numbers in the same order. Private: for the builder's own print, never for a page. */
export function wholeNumbers({ info }: Project): readonly (string | undefined)[] {
  return (info.identity?.marks ?? []).map(({ value }) => value);
}

/** All that says which machine it is, whole: what no file of the site may say. */
export function privateNumbers(projects: readonly Project[]): readonly string[] {
  return projects
    .flatMap((project) => [project.info.machine.identity, ...wholeNumbers(project)])
    .filter((text) => text !== undefined);
}

/** A source's name by its id. */
export function sourceName({ sources }: Project, id: string | undefined): string | undefined {
  return sources.find((source) => source.id === id)?.name;
}
