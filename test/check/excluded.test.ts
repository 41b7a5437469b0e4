import { describe, expect, it } from 'vitest';
import { check } from './content-folder.ts';

const readings = (values: string, excluded: string, because: string) => ({
  'press/ledger/readings-more.csv': `id,spec,date,state,values,unit,instrument,excluded,because
r-9,ram-play,2025-03-03,as-found,${values},mm,dial-indicator,${excluded},${because}
`,
});

describe('values that do not count', () => {
  it('are named by position, with a reason', async () => {
    expect(await check(readings('0.41 4.1 0.42', '2', 'slipped'))).toBe('');
  });

  it('are some of those there are', async () => {
    expect(await check(readings('0.41 0.42', '3', 'slipped'))).toMatchInlineSnapshot(`
      "press/ledger/readings-more.csv:2:62
        excluded: there is no value 3 among 2
        → positions go from 1 to 2"
    `);
    expect(await check(readings('0.41 0.42', '0', 'slipped'))).toMatchInlineSnapshot(`
      "press/ledger/readings-more.csv:2:62
        excluded.0: "0" is not a whole number from 1 up
        → write digits alone, like 4"
    `);
  });

  it('are not all of them', async () => {
    expect(await check(readings('0.41 0.42', '1 2', 'slipped'))).toMatchInlineSnapshot(`
      "press/ledger/readings-more.csv:2:62
        excluded: no value is left
        → keep at least one"
    `);
    expect(await check(readings('0.41 0.42', '2 2', 'slipped'))).toBe('');
  });

  it('have a reason', async () => {
    expect(await check(readings('0.41 4.1', '2', ''))).toMatchInlineSnapshot(`
      "press/ledger/readings-more.csv:2:61
        values are excluded without a reason
        → add "because: …""
    `);
  });
});

describe('a limit for a length', () => {
  const spec = (...lines: readonly string[]) => ({
    'press/specs.yaml': ['max: 0.10 mm', ['max: 0.10 mm', ...lines].join('\n  ')] as const,
  });

  it('has both lengths', async () => {
    expect(await check(spec('per: 300 mm', 'over: 75 mm'))).toBe('');
    expect(await check(spec('per: 300 mm'))).toMatchInlineSnapshot(`
      "press/specs.yaml:8:8
        per: a limit for a length needs both "per" and "over"
        → add over: the length measured over"
    `);
    expect(await check(spec('over: 75 mm'))).toMatchInlineSnapshot(`
      "press/specs.yaml:8:9
        over: a limit for a length needs both "per" and "over"
        → add per: the length it holds for"
    `);
  });

  it('has lengths, above zero', async () => {
    expect(await check(spec('per: 0 mm', 'over: 75 kg'))).toMatchInlineSnapshot(`
      "press/specs.yaml:8:8
        per: a length of 0 mm is not above 0
      press/specs.yaml:9:9
        over: "kg" is a unit of mass, and a limit holds for a length
        → units of length: m, cm, mm, µm, in, thou, ft, km, mi"
    `);
  });
});
