import { describe, expect, test } from 'vitest';
import { isKnownOn, lastStepOn, stateOn } from '../../src/parts/state.ts';
import type { Day } from '../../src/time/day.ts';
import { projectOf, type Written } from '../book/project-of.ts';

const partOf = (steps: Written) => {
  const [part] = projectOf({
    lists: { parts: [{ id: 'seal', name: 'Seal', system: 'door', source: 'new', ...steps }] },
  }).parts;
  if (part === undefined) throw new Error('the part is not in the book');
  return part;
};
const stateAt = (steps: Written, day: string) => stateOn(partOf(steps), day as Day);

describe('the state of a part', () => {
  const steps = {
    wanted: '2025-03-01',
    ordered: '2025-03-05',
    got: '2025-03-20',
    fitted: '2025-04-02',
  };

  test.each([
    ['2025-02-28', 'noted'],
    ['2025-03-01', 'wanted'],
    ['2025-03-04', 'wanted'],
    ['2025-03-05', 'ordered'],
    ['2025-03-19', 'ordered'],
    ['2025-03-20', 'in-hand'],
    ['2025-04-01', 'in-hand'],
    ['2025-04-02', 'fitted'],
    ['2030-01-01', 'fitted'],
  ])('on %s is %s: a step counts from its own day on', (day, state) => {
    expect(stateAt(steps, day)).toBe(state);
  });

  test('is the furthest step, not the latest one dated', () => {
    expect(stateAt({ got: '2025-03-20', fitted: '2025-03-20' }, '2025-03-20')).toBe('fitted');
    expect(stateAt({ fitted: '2025-04-02', scrapped: '2025-05-01' }, '2025-06-01')).toBe(
      'scrapped',
    );
    expect(stateAt({ scrapped: '2025-05-01', sold: '2025-05-02' }, '2025-06-01')).toBe('sold');
  });

  test('passes over steps that are not written down', () => {
    expect(stateAt({ got: '2025-03-20' }, '2025-03-19')).toBe('noted');
    expect(stateAt({ got: '2025-03-20' }, '2025-03-20')).toBe('in-hand');
  });

  test('is noted for good without any step', () => {
    expect(stateAt({}, '2025-03-20')).toBe('noted');
  });

  test('has the day of its latest step', () => {
    expect(lastStepOn(partOf(steps), '2025-03-21' as Day)).toBe('2025-03-20');
    expect(lastStepOn(partOf(steps), '2025-02-28' as Day)).toBeUndefined();
  });
});

describe('a part is known', () => {
  test('from its first step on', () => {
    const part = partOf({ ordered: '2025-03-05', fitted: '2025-04-02' });
    expect(isKnownOn(part, '2025-03-04' as Day)).toBe(false);
    expect(isKnownOn(part, '2025-03-05' as Day)).toBe(true);
  });

  test('from the start when it has no step', () => {
    expect(isKnownOn(partOf({}), '2000-01-01' as Day)).toBe(true);
  });
});

test('a view groups parts by their state on its day and by source, in a fixed order', () => {
  const part = (id: string, source: string, steps: Written) => ({
    ...{ id, name: id, system: 'door', source },
    ...steps,
  });
  const project = projectOf({
    lists: {
      sources: [
        { id: 'base', kind: 'base', name: 'The press' },
        { id: 'new', kind: 'new', name: 'Bought' },
      ],
      parts: [
        part('seal', 'new', { wanted: '2025-03-01', fitted: '2025-04-02' }),
        part('hinge', 'base', { got: '2025-03-01' }),
        part('latch', 'base', { got: '2025-04-30' }),
      ],
    },
  });
  const idsOf = (groups: ReadonlyMap<string, readonly { part: { id: string } }[]>) =>
    [...groups].map(([key, parts]) => `${key}: ${parts.map((item) => item.part.id).join(' ')}`);

  const march = project.asOf('2025-03-31' as Day);
  expect(idsOf(march.partsByState)).toEqual(['wanted: seal', 'in-hand: hinge']);
  expect(idsOf(project.now.partsByState)).toEqual(['in-hand: hinge latch', 'fitted: seal']);
  expect(idsOf(project.now.partsBySource)).toEqual(['base: hinge latch', 'new: seal']);
});
