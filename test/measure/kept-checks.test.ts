import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test, vi } from 'vitest';
import { openBook } from '../../src/book/open.ts';
import type { Book } from '../../src/book/types.ts';
import { inWorkshop } from '../cli/run-command.ts';

const DERIVED = `- id: half-play
  name: Half of the play
  about: What one side has of it.
  quantity: length
  unit: mm
  system: ram
  formula: p/2
  inputs: { p: ram-play }
`;

type Module = typeof import('../../src/site/cross-checks.ts');

/** The cross-checks of a folder with one derived spec of two values, its work folder, and the file they are kept in. */
function inFolder(use: (module: Module, file: string, book: Book) => Promise<void>): Promise<void> {
  return inWorkshop({ 'press/specs-derived.yaml': DERIVED }, async ({ content, work }) => {
    vi.stubEnv('WITNESSMARK_CONTENT', content);
    vi.stubEnv('WITNESSMARK_WORK', work);
    vi.resetModules();
    try {
      const book = await openBook(content, { now: new Date('2030-01-01') });
      await use(
        await import('../../src/site/cross-checks.ts'),
        join(work, 'cache/cross-checks/press.json'),
        book,
      );
    } finally {
      vi.unstubAllEnvs();
    }
  });
}

test('the latest value of a derived spec is drawn once, and not again', () =>
  inFolder(async ({ refreshCrossChecks, keptCrossChecks }, file, book) => {
    expect(await refreshCrossChecks(book.projects)).toMatchObject({ drawn: 1 });
    const kept = await readFile(file, 'utf8');
    expect(await refreshCrossChecks(book.projects)).toMatchObject({ drawn: 0 });
    expect(await readFile(file, 'utf8')).toBe(kept);
    const checks = [...(await keptCrossChecks()).values()];
    // Half of 0.083 mm, in metres; the one before it, half of 0.413 mm, is history.
    expect(checks.map(({ mean }) => mean)).toEqual([expect.closeTo(0.0000417, 6)]);
    for (const { low, mean, high } of checks)
      expect([low, mean, high]).toEqual([low, mean, high].sort((a, b) => a - b));
  }));

test('a file that is not there, or broken, is as good as none', () =>
  inFolder(async ({ refreshCrossChecks, keptCrossChecks }, file, book) => {
    expect(await keptCrossChecks()).toEqual(new Map());
    await refreshCrossChecks(book.projects);
    await writeFile(file, '{"half a fi');
    expect(await keptCrossChecks()).toEqual(new Map());
    expect(await refreshCrossChecks(book.projects)).toMatchObject({ drawn: 1 });
  }));

test('what no value asks for any more is let go', () =>
  inFolder(async ({ refreshCrossChecks, keptCrossChecks }, file, book) => {
    await refreshCrossChecks(book.projects);
    const kept = JSON.parse(await readFile(file, 'utf8')) as Record<string, unknown>;
    await writeFile(file, JSON.stringify({ ...kept, old: Object.values(kept)[0] }));
    expect((await keptCrossChecks()).has('old')).toBe(true);
    expect(await refreshCrossChecks(book.projects)).toMatchObject({ drawn: 0 });
    expect((await keptCrossChecks()).has('old')).toBe(false);
  }));
