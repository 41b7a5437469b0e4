import { chapters } from './dossier/chapters.ts';
import { identity } from './dossier/identity.ts';
import { rows } from './dossier/rows.ts';

/** The printable record: its cover, its pages and its sections. */
export const dossier = {
  chapters,
  identity,
  rows,
  title: 'Dossier',
  description: (project: string) =>
    `One document about ${project}: condition as found, work, parts, specs, costs and marks, to print.`,
  heading: (project: string) => `${project}: dossier`,
  contents: 'Contents',
  page: 'Page {page} of {pages}',
  cover: {
    owner: 'Owner',
    document: 'Document',
    title: 'Title',
    machine: 'Machine',
    number: 'Number',
    asOf: 'As of',
    marked: 'Marked',
    notMarked: 'not marked',
    root: 'Root',
    address: 'Address',
    privateCopy: 'Private copy: it shows identity numbers whole, and is not for publishing.',
    caution:
      "This is the builder's own record, for a buyer, an insurer or an inspector to read. Values were taken and written down by the builder; they are no approval, no inspection and no valuation. Have whatever safety depends on checked by a qualified person. Local rules and licensed practice decide.",
  },
  sections: {
    machine: 'The machine',
    identity: 'Identity and papers',
    condition: 'Condition as found',
    decisions: 'Decisions',
    work: 'Work by phase',
    parts: 'Parts and where they came from',
    specs: 'Specs',
    money: 'Money',
    donors: 'Donor accounts',
    corrections: 'Corrections',
    marks: 'Marks',
    instruments: 'Instruments',
    open: 'Open points',
    hazards: 'Hazards named in the log',
    photos: 'Photos',
    references: 'How to look up a reference',
  },
  open: {
    none: 'None that the ledger knows of.',
    label: 'Open points',
    why: 'Why it is open',
    since: 'Since',
    where: 'Where',
    expected: (why: string, day: string) => `${why}, expected ${day}`,
    phase: (state: string) => `phase ${state}`,
    notMeasured: 'not measured',
    noVerdict: 'no verdict, since its uncertainty is not known',
    doesNotMeet: 'does not meet its limits',
    undecided: 'undecided: the limit lies inside ± U',
    target: { 'not reached': 'its target is not reached', undecided: 'its target is undecided' },
    wanted: (searches: number) =>
      `wanted, ${searches} ${searches === 1 ? 'search' : 'searches'} so far`,
    waitedFor: 'waited for',
    sentOut: 'sent out',
    overdue: (why: string) => `${why}, overdue`,
  },
};
