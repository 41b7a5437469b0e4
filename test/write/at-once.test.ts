import { expect, it } from 'vitest';
import { changesOf } from '../../src/write/journal.ts';
import { inContentFolder } from '../check/content-folder.ts';
import { mistakesIn, pressOf } from './press-ledger.ts';
import { startAdder } from './start-adder.ts';

const NAMES = ['one', 'two', 'three', 'four'];
const EACH = 12;

it('loses and doubles nothing when several processes add at once', () =>
  inContentFolder({}, async (content) => {
    const all = await Promise.all(NAMES.map((name) => startAdder(content, name, EACH).ended));
    expect(all.map(({ status, err }) => `${status}${err}`)).toEqual(NAMES.map(() => '0'));
    const press = await pressOf(content);
    const rows = [...press.lists.hours, ...press.lists.costs].map(({ value }) => value);
    const ids = rows.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    const own = rows.filter(({ what }) => what.endsWith(';'));
    const confirmed = all.flatMap((one) => one.confirmed);
    expect(own.map(({ id, what }) => `${id} ${what}`).sort()).toEqual(confirmed.sort());
    // Every third addition is of two rows.
    expect(confirmed).toHaveLength((NAMES.length * EACH * 4) / 3);
    expect(await mistakesIn(content)).toEqual([]);
    expect(await changesOf(content)).toHaveLength(NAMES.length * EACH);
  }));
