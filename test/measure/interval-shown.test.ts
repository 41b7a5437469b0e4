import { expect, test } from 'vitest';
import { openBook } from '../../src/book/open.ts';
import { crossCheck, crossCheckKey } from '../../src/measure/cross-check.ts';
import { showMeasured } from '../../src/measure/show.ts';
import { addressesOf } from '../../src/publish/address.ts';
import { specJson } from '../../src/publish/spec-json.ts';
import { inContentFolder, NOON } from '../check/content-folder.ts';

// A play of 0.5 mm ± 0.2 mm below the line: the distribution of the result leans far over.
const files = {
  'press/specs-derived.yaml': `- id: lever
  name: Lever
  about: How far the end moves.
  quantity: length
  unit: mm
  system: ram
  min: 80 mm
  formula: a*a/p
  inputs: { a: 8 mm, p: gap }
- id: gap
  name: Gap
  about: The gap itself.
  quantity: length
  unit: mm
  system: ram
`,
  'press/instruments-more.yaml': `- id: feeler
  name: Feeler
  quantity: length
  certificate-u: 0.2 mm
`,
  'press/ledger/readings-more.csv': `id,spec,date,state,values,unit,instrument
r-9,gap,2025-04-13,after,0.5,mm,feeler
`,
};

test('where the draws disagree with ± U, their interval is shown, judged by, and published', () =>
  inContentFolder(files, async (folder) => {
    const plain = await openBook(folder, { now: NOON });
    expect(plain.problems).toEqual([]);
    const worked = plain.project('press')?.values.get('lever')?.at(-1);
    if (worked?.kind !== 'worked') throw new Error('the lever was not worked out');

    const checks = new Map([[crossCheckKey(worked), crossCheck(worked)]]);
    const drawn = await openBook(folder, { now: NOON, checks });
    const [before, after] = [plain, drawn].map((book) => {
      const project = book.project('press');
      const figures = project?.now.spec('lever');
      if (!project || !figures?.latest) throw new Error('the lever is not in the book');
      const reader = { language: 'en-GB', otherUnits: 'imperial' } as const;
      const { text } = showMeasured(figures.latest, reader);
      const json = JSON.parse(
        JSON.stringify(specJson(figures, project, addressesOf('https://shed.example/'))),
      );
      return {
        text: text.replaceAll('\u00a0', ' '),
        verdict: figures.verdict,
        interval: json.values.at(-1).interval,
      };
    });
    // 64/0.5 = 128 mm, u = 128·0.1/0.5 = 25.6 mm; drawn, 64/(0.5 ± 0.196) is 92 mm to 210 mm.
    expect(before).toEqual({
      text: '(128 ± 50 mm)',
      verdict: 'undecided',
      interval: { low: expect.closeTo(77.8, 1), high: expect.closeTo(178.2, 1) },
    });
    expect(after?.verdict).toBe('meets');
    const { low, high } = (after ?? { interval: {} }).interval as { low: number; high: number };
    expect(Math.abs(low - 64 / 0.696)).toBeLessThan(0.5);
    expect(Math.abs(high - 64 / 0.304)).toBeLessThan(1.5);
    expect(after?.text).toBe(`(128 +${Math.round(high - 128)} −${Math.round(128 - low)} mm)`);
  }));
