import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { draws } from './draw.ts';
import { faultsOf, filesOf } from './faults.ts';
import { isSound, openWith, removeFolder, soundFolder } from './open-mutated.ts';

/** How many cases are tried; a long run is asked for. */
const CASES = Number(process.env.WITNESSMARK_FUZZ ?? 1_250);

const cases = fc.record({
  files: fc.array(fc.nat(), { minLength: 1, maxLength: 2 }),
  changes: fc.array(draws, { minLength: 1, maxLength: 4 }),
  bytes: draws,
});

let folder = '';
beforeAll(async () => {
  folder = await soundFolder();
});
afterAll(() => removeFolder(folder));

describe('content changed at random', () => {
  test('is sound as it is', async () => {
    expect((await openWith(folder, new Map())).problems).toEqual([]);
  });

  test(
    'is answered by problems that lie in its files, or by a good book',
    async () => {
      await fc.assert(
        fc.asyncProperty(cases, async (tried) => {
          expect(await faultsOf(folder, tried)).toEqual([]);
        }),
        { numRuns: CASES },
      );
    },
    CASES * 1_000,
  );

  test('is both refused and taken, so that neither answer is all there is', async () => {
    const tried = fc.sample(cases, { numRuns: 60, seed: 1 });
    const sound = [];
    for (const one of tried) sound.push(isSound(await openWith(folder, filesOf(one))));
    expect(sound.filter(Boolean).length).toBeGreaterThan(3);
    expect(sound.filter((is) => !is).length).toBeGreaterThan(20);
  });
});
