import { checkContent } from '../check/check.ts';
import type { CrossChecks } from '../measure/cross-check.ts';
import { type ReadContent, readContent } from '../read/content.ts';
import type { Problem } from '../read/problem.ts';
import { deepFreeze } from './once.ts';
import { makeProject } from './project.ts';
import type { Book } from './types.ts';

/** How a book is made. */
export interface BookOptions {
  /** Whether entries marked as drafts are in it. */
  readonly drafts?: boolean;
  /** Cross-checks of worked-out values made before; without them every value shows the GUM's interval. */
  readonly checks?: CrossChecks;
}

/** How a book is opened. */
export interface OpenOptions extends BookOptions {
  /** The moment that decides what lies in the future; the figures do not depend on it. */
  readonly now: Date;
}

/**
 * Reads a content folder into the one object that everything else asks: all projects, their figures on any day, and all problems.
 * Never throws for what the files say; a record with a mistake is left out and its problem listed.
 */
export async function openBook(
  contentDir: string,
  { now, ...options }: OpenOptions,
): Promise<Book> {
  const content = await readContent(contentDir);
  return makeBook(content, { ...options, problems: checkContent(content, now) });
}

/** Makes the book of what was read. Its problems are those it is told of: who makes pages of checked content looks for none. */
export function makeBook(
  content: ReadContent,
  {
    drafts = false,
    checks = new Map(),
    problems = [],
  }: BookOptions & { readonly problems?: readonly Problem[] } = {},
): Book {
  const projects = content.projects.flatMap(
    (project) => makeProject(project, { drafts, checks }) ?? [],
  );
  return Object.freeze({
    site: deepFreeze(content.site?.value),
    projects: Object.freeze(projects),
    problems: deepFreeze(problems),
    project: (id: string) => projects.find((project) => project.id === id),
  });
}
