import { describe, expect, it } from 'vitest';
import { check } from './content-folder.ts';

const waits = (row: string) => ({
  'press/ledger/waits.csv': `id,date,phase,for,part,what,expected,until\n${row}\n`,
});

describe('a wait', () => {
  it('ends no earlier than it begins, and is not expected to', async () => {
    const found = await check(waits('w-1,2025-05-10,rebuild,weather,,Frost,2025-05-09,2025-05-08'));
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/waits.csv:2:39
        expected: "2025-05-09" is before date (2025-05-10)
        → swap them, or correct the wrong one
      press/ledger/waits.csv:2:50
        until: "2025-05-08" is before date (2025-05-10)
        → swap them, or correct the wrong one"
    `);
  });

  it('may end on the day it begins', async () => {
    expect(await check(waits('w-1,2025-05-10,rebuild,weather,,Frost,,2025-05-10'))).toBe('');
  });

  it('has not ended in the future', async () => {
    const found = await check(waits('w-1,2025-05-10,rebuild,weather,,Frost,,2025-06-16'));
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/waits.csv:2:40
        until: "2025-06-16" is in the future (today is 2025-06-15)
        → write "expected: 2025-06-16" and leave until out while it lasts"
    `);
  });

  it('for a part says which', async () => {
    expect(await check(waits('w-1,2025-05-10,rebuild,part,,A gib,,'))).toMatchInlineSnapshot(`
      "press/ledger/waits.csv:2:24
        for: "part" does not say which part
        → add "part" with its id, or write "for: other""
    `);
    expect(await check(waits('w-1,2025-05-10,rebuild,part,gib,A gib,,'))).toBe('');
  });

  it('for a preparation says which', async () => {
    const found = await check(waits('w-1,2025-05-10,rebuild,preparation,,At the blaster,,'));
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/waits.csv:2:24
        for: "preparation" does not say which preparation
        → add "preparation" with its id, or write "for: other""
    `);
  });
});

describe('planned hours of a phase', () => {
  const hours = (least: string, most: string) =>
    check({
      'press/phases.yaml': [
        'planned-hours: "12:00"',
        `planned-hours: "12:00"\n  planned-hours-least: "${least}"\n  planned-hours-most: "${most}"`,
      ],
    });

  it('lie between the least and the most', async () => {
    expect(await hours('12:01', '11:59')).toMatchInlineSnapshot(`
      "press/phases.yaml:7:24
        planned-hours-least: "12:01" is more than planned-hours (12:00)
        → swap them, or write "planned-hours-least: 12:00"
      press/phases.yaml:8:23
        planned-hours-most: "11:59" is less than planned-hours (12:00)
        → swap them, or write "planned-hours-most: 12:00""
    `);
  });

  it('may be both', async () => {
    expect(await hours('12:00', '12:00')).toBe('');
  });
});

describe('the calendar', () => {
  const calendar = (text: string) =>
    check({ 'press/project.yaml': ['work: [clean, fit]\n', `work: [clean, fit]\n${text}`] });

  it('has no day of more than 24 hours', async () => {
    expect(await calendar('week:\n  friday: "24:01"\n')).toMatchInlineSnapshot(`
      "press/project.yaml:12:11
        friday: "24:01" is more than a day has
        → write 24:00 at the most"
    `);
    expect(await calendar('week:\n  friday: "24:00"\n')).toBe('');
  });

  it('has no days away that end before they begin', async () => {
    const found = await calendar('away:\n  - from: 2025-07-10\n    to: 2025-07-09\n');
    expect(found).toMatchInlineSnapshot(`
      "press/project.yaml:13:9
        to: "2025-07-09" is before from (2025-07-10)
        → swap them, or correct the wrong one"
    `);
    expect(await calendar('away:\n  - from: 2025-07-10\n    to: 2025-07-10\n')).toBe('');
  });
});
