import { describe, expect, it } from 'vitest';
import { check } from './content-folder.ts';

describe('a day', () => {
  const hours = (...rows: string[]) => ({
    'press/ledger/hours.csv': `id,date,hours,phase,work,who,what
h-001,2025-03-02,14:00,teardown,clean,,Cleaned the frame
${rows.join('\n')}
h-002,2025-03-08,5:00,teardown,fit,,Screw out
`,
  });

  it('has 24 hours for a person, and the row that goes over is named', async () => {
    const found = await check(hours('h-003,2025-03-02,10:01,teardown,clean,ines,Cleaned on'));
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/hours.csv:3:18
        hours: with "10:01" the day 2025-03-02 has 24:01 hours for "ines"
        → correct the hours, the date or the person"
    `);
  });

  it('may have 24 hours to the minute', async () => {
    expect(await check(hours('h-003,2025-03-02,10:00,teardown,clean,ines,Cleaned on'))).toBe('');
  });

  it('has 24 hours for each of two people', async () => {
    expect(await check(hours('h-003,2025-03-02,14:00,teardown,clean,helper-one,Too'))).toBe('');
  });
});

describe('a phase', () => {
  const phases = (after: Record<string, string>) => ({
    'press/phases.yaml': Object.entries(after)
      .map(
        ([id, names]) => `- id: ${id}
  name: Phase
  summary: Work.
  planned-start: 2025-03-01
  planned-finish: 2025-03-31
  planned-hours: "12:00"
  after: [${names}]
`,
      )
      .join(''),
  });

  it('does not wait for itself', async () => {
    expect(await check(phases({ teardown: 'teardown', rebuild: '' }))).toMatchInlineSnapshot(`
      "press/phases.yaml:7:11
        the phase "teardown" waits for itself: teardown waits for teardown
        → remove one of the "after" in this ring"
    `);
  });

  it('does not wait for itself round a corner, and the ring is named once', async () => {
    const found = await check(phases({ teardown: 'paint', rebuild: 'teardown', paint: 'rebuild' }));
    expect(found).toMatchInlineSnapshot(`
      "press/phases.yaml:14:11
        the phase "rebuild" waits for itself: teardown waits for paint waits for rebuild waits for teardown
        → remove one of the "after" in this ring"
    `);
  });

  it('may wait for two that wait for the same one', async () => {
    const found = await check(
      phases({ teardown: '', frame: 'teardown', screw: 'teardown', rebuild: 'frame, screw' }),
    );
    expect(found).toBe('');
  });
});

describe('a calibration that had run out on the day of a reading', () => {
  const reading = (day: string) => ({
    'press/ledger/readings-screw.csv': `id,spec,date,state,values,unit,instrument
r-010,screw-torque,${day},as-found,6.5,N·m,torque-wrench
`,
  });

  it('is worth a warning', async () => {
    expect(await check(reading('2025-05-02'))).toMatchInlineSnapshot(`
      "press/ledger/readings-screw.csv:2:48 (warning)
        the calibration of "torque-wrench" ran out on 2025-05-01, before this reading of 2025-05-02
        → have it calibrated, and write the new dates in instruments"
    `);
  });

  it('is good on its last day', async () => {
    expect(await check(reading('2025-05-01'))).toBe('');
  });
});
