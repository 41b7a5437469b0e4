import { cp, mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBook } from '../../src/book/open.ts';
import type { Book } from '../../src/book/types.ts';
import { everyFigure } from '../book/every-figure.ts';

/** A day after everything in the demo. */
const NOW = new Date('2027-01-01T12:00:00Z');

/** One folder for each project of the demo, so that a run reads no more than it must. */
interface Home {
  readonly folder: string;
  readonly files: readonly string[];
}

const homes: Home[] = [];

beforeAll(async () => {
  for (const item of await readdir('content', { withFileTypes: true })) {
    if (!item.isDirectory() || item.name.startsWith('.')) continue;
    const folder = await mkdtemp(join(tmpdir(), 'witnessmark-slips-'));
    const project = join(folder, item.name);
    await cp('content/site.yaml', join(folder, 'site.yaml'));
    await cp(join('content', item.name), project, {
      recursive: true,
      filter: (path) => !/[\\/]photos$/.test(path),
    });
    await mkdir(join(project, 'photos'));
    for (const photo of await readdir(join('content', item.name, 'photos')))
      await writeFile(join(project, 'photos', photo), '');
    homes.push({ folder, files: await textFiles(folder) });
  }
});

afterAll(async () => {
  for (const { folder } of homes) await rm(folder, { recursive: true, force: true });
});

async function textFiles(folder: string): Promise<string[]> {
  const items = await readdir(folder, { recursive: true, withFileTypes: true });
  return items
    .filter((item) => item.isFile() && /\.(yaml|csv|mdx)$/.test(item.name))
    .map((item) => relative(folder, join(item.parentPath, item.name)))
    .sort();
}

const slip = fc.record({ home: fc.nat(), file: fc.nat(), at: fc.nat() });

/** Opens the book with one file changed, and puts the file back. */
async function openWith(
  { home, file, at }: { home: number; file: number; at: number },
  change: (text: string, at: number) => string,
): Promise<{ book: Book; folder: string; changed: string; text: string }> {
  const { folder, files } = homes[home % homes.length] as Home;
  const changed = files[file % files.length] as string;
  const sound = await readFile(join(folder, changed), 'utf8');
  const text = change(sound, at % sound.length);
  try {
    await writeFile(join(folder, changed), text);
    return { book: await openBook(folder, { now: NOW }), folder, changed, text };
  } finally {
    await writeFile(join(folder, changed), sound);
  }
}

/** Works out every figure of every project, which throws if the book is no good. */
function workOut({ projects }: Book): number {
  return projects.reduce((count, project) => count + everyFigure(project), 0);
}

async function expectAnAnswer(opened: Awaited<ReturnType<typeof openWith>>): Promise<void> {
  const { book, folder, changed, text } = opened;
  for (const { file, line, column, message } of book.problems) {
    const lines = (file === changed ? text : await readFile(join(folder, file), 'utf8')).split(
      '\n',
    );
    const width = lines[line - 1]?.length ?? -1;
    expect(width + 1, `${file}:${line}:${column} ${message}`).toBeGreaterThanOrEqual(column);
  }
  expect(workOut(book)).toBe(20 * book.projects.length);
  if (book.problems.every(({ level }) => level === 'warning')) {
    expect(book.site).toBeDefined();
    expect(book.projects).toHaveLength(1);
  }
}

describe('a slip of one character in a file of the demo', () => {
  it('left out, gives problems inside their files or a good book', async () => {
    const leftOut = (text: string, at: number) => text.slice(0, at) + text.slice(at + 1);
    await fc.assert(
      fc.asyncProperty(slip, async (where) => expectAnAnswer(await openWith(where, leftOut))),
      { numRuns: 100 },
    );
  });

  it('put in, gives problems inside their files or a good book', async () => {
    const sign = fc.constantFrom(...'"\'{}[]<>*&!|:,;#-`\t\n\r\u0000é😀');
    await fc.assert(
      fc.asyncProperty(slip, sign, async (where, typed) =>
        expectAnAnswer(
          await openWith(where, (text, at) => text.slice(0, at) + typed + text.slice(at)),
        ),
      ),
      { numRuns: 60 },
    );
  });
});
