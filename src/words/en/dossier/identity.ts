import { counted } from '../../counted.ts';

/** Which machine it is: facts, numbers and papers. */
export const identity = {
  machine: 'Machine',
  builder: 'Builder',
  state: 'State',
  finished: (day: string) => `finished on ${day}`,
  underWay: (day: string) => `under way, as of ${day}`,
  recorded: 'Recorded',
  recordedIn: (first: string, last: string, entries: number) =>
    `${first} to ${last}, ${counted(entries, 'entry', 'entries')} {ref}`,
  hoursWorked: 'Hours worked',
  hoursAndHow: (hours: string, how: string) => `${hours} h, ${how} {ref}`,
  moneySpent: 'Money spent, credits taken off',
  moneyAndHow: (money: string, how: string) => `${money}, ${how} {ref}`,
  parts: 'Parts',
  partsKnown: (parts: number, fitted: number) => `${parts} known, ${fitted} of them fitted {ref}`,
  specs: 'Specs',
  specsRead: (specs: number, readings: number) =>
    `${specs}, from ${counted(readings, 'reading', 'readings')} {ref}`,
  keeps: 'The result keeps the identity of {source}, {machine}. {because}',
  caution:
    'Rules on joining machines, on registration and on inspection differ from place to place, and they decide, not this page. Ask the office that registers machines, and a qualified inspector, before the result is used, sold or insured.',
  numbers: 'Numbers',
  number: 'Number',
  where: 'Where it stands',
  cameWith: 'Came with',
  reads: 'Reads',
  papers: 'Papers',
  paper: 'Paper',
  paperFor: 'For',
  held: 'Held',
  yes: 'yes',
  no: 'no',
  masked:
    'A number is shown by its last characters only, and only where the builder has released it. The builder can print this page with whole numbers for whoever has a right to see them.',
  notPublished: 'not published',
  notWrittenDown: 'not written down',
};
