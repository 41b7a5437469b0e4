import { checkContent } from '../check/check.ts';
import { type ReadContent, readContent } from '../read/content.ts';
import type { Instead } from '../read/files.ts';
import { readContentFile } from '../read/files.ts';
import type { Problem } from '../read/problem.ts';
import { decodeText } from '../read/text.ts';
import { isInMarkedRow } from './marked-places.ts';
import { type Mended, mendText } from './mend-text.ts';

/** What mending a content folder comes to; nothing is written yet. */
export interface MendedContent {
  readonly mended: readonly Mended[];
  /** Files that change: their bytes before and after. */
  readonly files: ReadonlyMap<string, ChangedFile>;
}

export interface ChangedFile {
  readonly before: Uint8Array;
  readonly after: Uint8Array;
}

/** A mended row is understood, and may show a problem that could not be seen before; ten times is more than any row has layers. */
const ROUNDS = 10;

/** Mends all that has one answer, round after round, until nothing is left that has. `typed` are files as they would be, in place of those that lie there. */
export async function mendContent(
  contentDir: string,
  now: Date,
  typed: Instead = new Map(),
): Promise<MendedContent> {
  const files = new Map<string, ChangedFile>();
  const mended: Mended[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const mendedFiles = [...files].map(([file, { after }]) => [file, after] as const);
    const instead = new Map([...typed, ...mendedFiles]);
    const content = await readContent(contentDir, { instead });
    const made = await mendRound(contentDir, content, { files, now, typed });
    if (made.length === 0) break;
    mended.push(...made);
  }
  return { mended, files };
}

interface Round {
  readonly files: Map<string, ChangedFile>;
  readonly now: Date;
  readonly typed: Instead;
}

async function mendRound(
  contentDir: string,
  content: ReadContent,
  { files, now, typed }: Round,
): Promise<Mended[]> {
  const wanted = checkContent(content, now).filter(({ mend }) => mend !== undefined);
  const made: Mended[] = [];
  for (const [file, problems] of Map.groupBy(wanted, (problem: Problem) => problem.file)) {
    const before =
      files.get(file)?.before ?? typed.get(file) ?? (await readContentFile(contentDir, file));
    const current = files.get(file)?.after ?? before;
    const text = decodeText(current, file);
    if (typeof text !== 'string') continue;
    const free = problems.filter((problem) => !isInMarkedRow(content, problem, text));
    const { bytes, mended } = mendText(current, free);
    if (mended.length > 0) files.set(file, { before, after: bytes });
    made.push(...mended);
  }
  return made;
}
