import { readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { checkContent } from '../../src/check/check.ts';
import { mendContent } from '../../src/mend/mend-content.ts';
import { mendText } from '../../src/mend/mend-text.ts';
import { readContent } from '../../src/read/content.ts';
import type { Instead } from '../../src/read/files.ts';

const NOW = new Date('2027-01-01T12:00:00Z');
const EXAMPLES = 'content';

/** Mistakes in files of the demo, each with one answer: the text as it should be, and as it is mistyped. */
const SLIPS = [
  ['lapwing/specs.yaml', 'max: 1050 kg', 'max: 1050 KG'],
  ['lapwing/specs.yaml', 'quantity: mass', 'quantity: Mass'],
  ['lapwing/entries/2025-08-03-four-scales.mdx', 'date: 2025-08-03', 'date: 3 August 2025'],
  ['lapwing/entries/2025-08-03-four-scales.mdx', 'phase: survey', 'phase: survye'],
  ['lapwing/entries/2025-08-16-a-second-bus.mdx', 'windscreen]', 'windscren]'],
  ['lapwing/entries/2025-08-31-the-inside-comes-out.mdx', 'part:heater-old', 'part:heaetr-old'],
  ['lapwing/entries/2025-08-31-the-inside-comes-out.mdx', 'signal="DANGER"', 'signal="Danger"'],
] as const;

const bytesOf = (text: string) => new TextEncoder().encode(text);

test('what was mistyped in files that no mark counts is what it was before, byte for byte', async () => {
  await fc.assert(
    fc.asyncProperty(fc.subarray([...SLIPS], { minLength: 1 }), async (slips) => {
      const planted = new Map<string, Uint8Array>();
      for (const [file, right, wrong] of slips) {
        const text = new TextDecoder().decode(
          planted.get(file) ?? readFileSync(`${EXAMPLES}/${file}`),
        );
        expect(text).toContain(right);
        planted.set(file, bytesOf(text.replace(right, wrong)));
      }
      const mended = await mendAll(planted);
      for (const file of planted.keys())
        expect(
          Buffer.from(mended.get(file) ?? []).equals(await readFile(`${EXAMPLES}/${file}`)),
        ).toBe(true);
      expect((await mendContent(EXAMPLES, NOW, mended)).mended).toEqual([]);
      const left = checkContent(await readContent(EXAMPLES, { instead: mended }), NOW);
      expect(left.filter(({ level }) => level === 'error')).toEqual([]);
    }),
    { numRuns: 8 },
  );
});

async function mendAll(planted: Instead): Promise<Instead> {
  const { files } = await mendContent(EXAMPLES, NOW, planted);
  return new Map([...planted, ...[...files].map(([file, { after }]) => [file, after] as const)]);
}

test('a marked row is left, whatever slipped in it', async () => {
  const file = 'lapwing/ledger/hours-2025.csv';
  const text = await readFile(`${EXAMPLES}/${file}`, 'utf8');
  const planted = new Map([[file, bytesOf(text.replace(',survey,', ',survye,'))]]);
  const problems = checkContent(await readContent(EXAMPLES, { instead: planted }), NOW);
  const wanted = problems.filter(({ mend }) => mend !== undefined);
  expect(wanted).toHaveLength(1);
  expect(mendText(planted.get(file) ?? bytesOf(''), wanted).mended).toHaveLength(1);
  expect((await mendContent(EXAMPLES, NOW, planted)).mended).toEqual([]);
});
