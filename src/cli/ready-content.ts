import { makeBook } from '../book/open.ts';
import { NotBuilt } from '../build/not-built.ts';
import { stateOf } from '../build/part-key.ts';
import type { ReadyContent } from '../build/ready.ts';
import { lap } from '../build/stages.ts';
import { checkContent } from '../check/check.ts';
import { derivePhotos } from '../photo/derive.ts';
import { readContent } from '../read/content.ts';
import { changedSince, contentState } from '../read/content-state.ts';
import type { Problem } from '../read/problem.ts';
import { refreshCrossChecks } from '../site/cross-checks.ts';
import { cacheDir, contentDir, workDir } from '../site/folders.ts';
import { checkAddresses } from './address-check.ts';
import { describeProblems, plural } from './print-problems.ts';
import { terminal } from './terminal.ts';

/** What is made ready. */
export interface ReadyOptions {
  /** Reads every original photo again, whatever its size and times say. */
  readonly verify: boolean;
  /** Only photos and values of these projects are made; all are checked. */
  readonly only: readonly string[] | undefined;
}

/** Reads and checks all content and says what is wrong; where nothing is, makes photos and draws values. */
export async function readyContent({ verify, only }: ReadyOptions): Promise<ReadyContent> {
  lap('start');
  const before = await contentState(contentDir);
  const state = await stateOf(contentDir);
  const content = await readContent(contentDir);
  const found = checkContent(content, new Date());
  const book = makeBook(content, { problems: found });
  lap('read');
  const sound = !hasErrors(found);
  const problems = [
    ...found,
    ...(sound ? await checkAddresses(contentDir, book.site, async () => book) : []),
    ...(sound
      ? await derivePhotos(
          book,
          { contentDir, workDir, cacheDir },
          { verify, only, listener: terminal },
        )
      : []),
  ];
  lap('photos');
  if (problems.length > 0) console.log(describeProblems(problems, contentDir));
  if (!hasErrors(problems)) {
    const chosen = book.projects.filter(({ id }) => only?.includes(id) ?? true);
    const { drawn, seconds } = await refreshCrossChecks(chosen);
    if (drawn > 0)
      console.log(
        `Drew ${plural(drawn, 'worked-out value')}, as surely as by a million draws each, in ${seconds.toFixed(1)} s.`,
      );
  }
  lap('draws');
  const stillSame = async () => {
    const changed = changedSince(before, await contentState(contentDir));
    if (changed.length > 0)
      throw new NotBuilt(
        `Changed while it was read: ${changed.join(', ')}\nRun the command again.`,
      );
  };
  return { state, content, book, problems, stillSame };
}

/** Whether one of the problems forbids a build. */
export function hasErrors(problems: readonly Problem[]): boolean {
  return problems.some(({ level }) => level === 'error');
}
