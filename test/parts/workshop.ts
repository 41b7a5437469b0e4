import type { View } from '../../src/book/types.ts';
import type { Day } from '../../src/time/day.ts';
import { projectOf, type Written } from '../book/project-of.ts';

// A small project with a part of every way: sent out and late, hunted for in vain, hunted and found, left over, made.

const part = (id: string, source: string, rest: Written): Written => ({
  ...{ id, name: id, system: 'brakes', source },
  ...rest,
});
const search = (id: string, date: string, about: string, result: string, rest: Written = {}) => ({
  ...{ id, date, part: about, result, place: 'A shop' },
  ...rest,
});

export const workshopLists = {
  sources: [
    { id: 'base', kind: 'base', name: 'The press', acquired: '2025-01-01' },
    { id: 'donor', kind: 'donor', name: 'A second press', acquired: '2025-02-01' },
    { id: 'new', kind: 'new', name: 'Bought' },
    { id: 'made', kind: 'made', name: 'Made' },
  ],
  phases: ['strip', 'build'].map((id) => ({
    ...{ id, name: id, summary: 'Work.' },
    ...{ 'planned-start': '2025-01-01', 'planned-finish': '2025-06-30', 'planned-hours': '40:00' },
    ...(id === 'strip' ? { finished: '2025-03-31' } : {}),
  })),
  parts: [
    part('table', 'base', { got: '2025-01-10', fitted: '2025-04-02', mass: '40 kg' }),
    part('drum', 'donor', { got: '2025-02-03', mass: '7500 g', quantity: '2' }),
    part('spare', 'donor', { got: '2025-02-03', 'for-sale': '2025-04-20', asking: '15' }),
    part('seal', 'new', { wanted: '2025-02-10', ordered: '2025-04-01', got: '2025-04-11' }),
    part('catch', 'new', { wanted: '2025-03-01', phase: 'build', estimate: '20 EUR' }),
    part('knob', 'new', { wanted: '2025-03-05', phase: 'strip' }),
    part('guard', 'made', { got: '2025-03-15', fitted: '2025-03-16' }),
  ],
  searches: [
    search('s-1', '2025-02-05', 'seal', 'listed-not-held', { price: '9.00' }),
    search('s-2', '2025-03-12', 'seal', 'none'),
    search('s-3', '2025-04-01', 'seal', 'bought', { price: '12.50 EUR' }),
    search('s-4', '2025-03-20', 'catch', 'listed-not-held', { price: '18.00' }),
    search('s-5', '2025-05-10', 'catch', 'promised'),
  ],
  preparations: [
    {
      ...{ id: 'w-1', date: '2025-02-10', parts: ['table', 'drum'], kind: 'blasting' },
      ...{ what: 'To clean metal', out: 'true', place: 'A yard', due: '2025-02-20' },
      back: '2025-03-02',
    },
    {
      ...{ id: 'w-2', date: '2025-04-25', parts: ['drum'], kind: 'machining', what: 'Turned' },
      ...{ out: 'true', place: 'A shop', due: '2025-05-05' },
    },
    {
      ...{ id: 'w-3', date: '2025-03-05', parts: ['table'], kind: 'coating' },
      ...{ what: 'Painted', back: '2025-03-20' },
    },
  ],
  costs: [
    {
      ...{ id: 'c-1', date: '2025-02-01', amount: '100', category: 'vehicle', phase: 'strip' },
      ...{ source: 'donor', parts: ['drum', 'spare'], what: 'The second press' },
    },
    {
      ...{ id: 'c-2', date: '2025-03-02', amount: '30', category: 'service', phase: 'strip' },
      ...{ source: 'donor', parts: ['drum'], what: 'Blasting' },
    },
  ],
} satisfies Parameters<typeof projectOf>[0]['lists'];

export const workshop = projectOf({ lists: workshopLists });

/** The small project as it stood on a day. */
export function workshopOn(day: string): View {
  return workshop.asOf(day as Day);
}
