import { describe, expect, it } from 'vitest';
import { check } from './content-folder.ts';

const ENTRY = 'press/entries/2025-04-13-the-ram-slides.mdx';

const readings = (...rows: string[]) => ({
  'press/ledger/readings.csv': `id,spec,date,state,values,unit,instrument
${rows.join('\n')}
`,
  [ENTRY]: ['tells: [h-002, r-002]\n', ''] as const,
});
const BEFORE = 'r-001,ram-play,2025-03-02,as-found,0.41,mm,dial-indicator';
const AFTER = 'r-002,ram-play,2025-04-13,after,0.08,mm,dial-indicator';

describe('a value that an entry shows', () => {
  it('has been read', async () => {
    const found = await check({ [ENTRY]: ['<Tally />', 'Now <Spec of="screw-torque" />'] });
    expect(found).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:11
        <Spec> of "screw-torque": there is no reading on or before 2025-04-13
        → add the reading to ledger/readings, or take the component out"
    `);
  });

  it('has been read by the day of the entry', async () => {
    const later = AFTER.replace('2025-04-13', '2025-04-14');
    expect(await check(readings(BEFORE, AFTER))).toBe('');
    expect(await check(readings(BEFORE, later))).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:10:9
        <Change> of "ram-play": there is no reading from after the work on or before 2025-04-13
        → add the reading to ledger/readings, or take the component out"
    `);
    expect(await check(readings(later))).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:8:44
        <Spec> of "ram-play": there is no reading on or before 2025-04-13
        → add the reading to ledger/readings, or take the component out
      press/entries/2025-04-13-the-ram-slides.mdx:10:9
        <Change> of "ram-play": there is no reading from before the work on or before 2025-04-13
        → add the reading to ledger/readings, or take the component out"
    `);
  });

  it('has been read in the state that is asked for', async () => {
    const found = await check({
      [ENTRY]: ['of="ram-play" />.', 'of="ram-play" state="final" />.'],
    });
    expect(found).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:9:44
        <Spec> of "ram-play": there is no reading with the state "final" on or before 2025-04-13
        → add the reading to ledger/readings, or take the component out"
    `);
  });

  it('as a change has been read before the work', async () => {
    expect(await check(readings(AFTER))).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:10:9
        <Change> of "ram-play": there is no reading from before the work on or before 2025-04-13
        → add the reading to ledger/readings, or take the component out"
    `);
  });
});
