import fc from 'fast-check';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { Draw, draws } from './draw.ts';
import { everyKind } from './every-kind.ts';
import {
  bytesOf,
  downloadsOf,
  type Opened,
  openWith,
  removeFolder,
  soundFolder,
} from './open-mutated.ts';
import { rewrite } from './rewrite.ts';

const CASES = Math.ceil(Number(process.env.WITNESSMARK_FUZZ ?? 2_500) / 10);

const names = Object.keys(everyKind);

/** Everything the rows come to: totals, and all rows as they are published, in whatever order. */
function meaningOf(opened: Opened): object {
  return {
    rows: downloadsOf(opened)
      .slice(0, -1)
      .map((text) => text.split('\r\n').sort()),
    totals: opened.projects.map(({ now }) => [
      now.costsByCategory.total.value,
      now.hoursByPhase.total.value,
      now.specs.map(({ spec, verdict }) => JSON.stringify([spec.id, verdict])).sort(),
      now.phases.map(({ phase, hours }) => JSON.stringify([phase.id, hours.value])).sort(),
    ]),
  };
}

let folder = '';
let meant: object;
beforeAll(async () => {
  folder = await soundFolder();
  meant = meaningOf(await openWith(folder, new Map()));
});
afterAll(() => removeFolder(folder));

test('the same rows in other words are taken, and come to the same', {
  timeout: CASES * 1_000 + 60_000,
}, async () => {
  const rewriting = fc.array(fc.record({ file: fc.nat(), numbers: draws }), {
    minLength: 1,
    maxLength: 4,
  });
  await fc.assert(
    fc.asyncProperty(rewriting, async (changes) => {
      const texts: Record<string, string> = {};
      for (const { file: number, numbers } of changes) {
        const file = names[number % names.length] as string;
        if (file in texts) continue;
        Object.assign(texts, rewrite(file, everyKind[file] ?? '', new Draw(numbers)));
      }
      const opened = await openWith(
        folder,
        new Map(Object.entries(texts).map(([file, text]) => [file, bytesOf(text)])),
      );
      expect(opened.problems, JSON.stringify(texts, null, 1)).toEqual([]);
      expect(meaningOf(opened)).toEqual(meant);
    }),
    { numRuns: CASES },
  );
});

test('another number is another meaning', async () => {
  const file = 'press/ledger/hours.csv';
  const text = (everyKind[file] ?? '').replace('5:00', '5:01');
  expect(meaningOf(await openWith(folder, new Map([[file, bytesOf(text)]])))).not.toEqual(meant);
});
