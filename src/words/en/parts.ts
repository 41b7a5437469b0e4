import { counted } from '../counted.ts';
import { choices } from './parts/choices.ts';
import { hunts } from './parts/hunts.ts';
import { part } from './parts/part.ts';
import { survey } from './parts/survey.ts';

/** Parts: where they came from, what was done to them, how they were looked for, graded and chosen. */
export const parts = {
  part,
  survey,
  choices,
  hunts,
  states: {
    noted: 'noted',
    wanted: 'wanted',
    ordered: 'ordered',
    'in-hand': 'in hand',
    fitted: 'fitted',
    scrapped: 'scrapped',
    sold: 'sold',
  },
  list: {
    title: 'Parts',
    description: (project: string) =>
      `Every part of ${project}: its state, what was done to it, and how it was looked for.`,
    document: 'Parts list',
    count: (count: number) => `${counted(count, 'part', 'parts')}.`,
    byState: 'By state',
    prepared: 'Prepared, here or sent out',
    placesPrivate: 'Where parts were sent is not published.',
    searchesPrivate: 'Where a part was looked for is not published; what came of it is.',
    fittedInOrder: 'Fitted, in order',
    system: 'System',
    state: 'State',
    since: 'Since',
    massEach: 'Mass each',
  },
  preparations: {
    label: 'Preparations',
    begun: 'Begun',
    parts: 'Parts',
    where: 'Where',
    backOrDone: 'Back or done',
    took: 'Took',
    sentOut: 'sent out',
    here: 'here',
    notYet: 'not yet',
    due: (day: string) => `due ${day}`,
    dueAndOverdue: (day: string, days: number) =>
      `due ${day}, ${days === 1 ? '1 day' : `${days} days`} overdue`,
    kinds: {
      blasting: 'blasting',
      coating: 'coating',
      machining: 'machining',
      welding: 'welding',
      repair: 'repair',
      test: 'test',
      other: 'other',
    },
  },
  sources: {
    title: 'Where it all came from',
    description: (project: string) =>
      `Which share of ${project} came from which machine, was bought, or was made: by pieces, mass and money.`,
    document: 'Sources',
    lead: (count: number) =>
      `${counted(count, 'part', 'parts')} known, of which those fitted or in hand are counted here. What is only wanted, was sold or was scrapped is {list} and below.`,
    inTheList: 'in the parts list',
    count: (count: number) => `${count} ${count === 1 ? 'part' : 'parts'}.`,
    donorCost: 'What it really cost',
    shares: 'Shares of the sources',
    pieces: 'Pieces',
    mass: 'Mass',
    money: 'Money',
    all: 'All',
    none: 'not tied to a source',
    caption: (given: { day: string; pieces: string; mass: string; money: string }) =>
      `As of ${given.day}. Pieces: ${given.pieces}. Mass: ${given.mass}. Money: ${given.money}.`,
    drawing: (count: number) => `Shares of ${count} sources by pieces, mass and money.`,
    bars: { pieces: 'pieces', mass: 'mass', money: 'money' },
    howPieces: (parts: number) =>
      `pieces of ${parts} ${parts === 1 ? 'part' : 'parts'}, fitted or in hand`,
    howMass: (weighed: number) =>
      `sum of ${weighed} ${weighed === 1 ? 'part' : 'parts'} with a mass, times their pieces`,
    howMassWithout: (weighed: number, without: number) =>
      `sum of ${weighed} ${weighed === 1 ? 'part' : 'parts'} with a mass, times their pieces; ${without} without one left out`,
  },
};
