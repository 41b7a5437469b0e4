import { counted } from '../../counted.ts';

/** What leaves the site: lines to cite, cards, feeds, and what programs read. */
export const sharing = {
  title: 'Share',
  address: 'Address',
  citeAs: 'Cite as',
  data: 'Data',
  qr: (address: string) => `QR code of ${address}`,
  citation: {
    measured: (given: { value: string; uncertainty: string; day: string }) =>
      `${given.value} (${given.uncertainty}), measured ${given.day}`,
    calculated: (given: { value: string; uncertainty: string; day: string }) =>
      `${given.value} (${given.uncertainty}), calculated ${given.day}`,
    known: 'U at 95 %',
    unknown: 'uncertainty not known',
    asOf: (part: string, day: string) => `${part}, as of ${day}`,
  },
  card: {
    owner: 'Owner',
    document: 'Document',
    date: 'Date',
    phase: 'Phase',
    state: 'State',
    uncertainty: 'Uncertainty',
    finished: 'Finished',
    underWay: 'Under way',
    spec: 'Measured spec',
    known: 'U at 95 %',
    unknown: 'not known',
    entry: (number: number, count: number) => `Log entry ${number} of ${count}`,
    soFar: (given: { hours: string; money: string; entries: number }) =>
      `${given.hours} hours worked, ${given.money} spent, ${counted(given.entries, 'entry', 'entries')}`,
    beforeAndAfter: (given: { before: string; after: string; changed: string }) =>
      `before ${given.before}, after ${given.after}: ${given.changed}`,
    verdicts: {
      meets: 'meets its limits, uncertainty counted',
      'does not meet': 'does not meet its limits, uncertainty counted',
      undecided: 'undecided against its limits, uncertainty counted',
    },
  },
  feed: {
    marks: 'Marks',
    marked: (day: string) => `Ledger marked ${day}`,
    drawing: 'Drawing on the page',
    drawingOf: (label: string) => `Drawing on the page: ${label}`,
    mark: (rows: string, root: string) => `${rows}, root ${root}`,
  },
  structured: {
    ledger: (project: string) => `Ledger of ${project}`,
    measured: (day: string, state: string) => `Measured ${day}, ${state}`,
    calculated: (day: string, state: string) => `Calculated ${day}, ${state}`,
    states: { 'as-found': 'as found', before: 'before', after: 'after', final: 'final' },
    uncertainty: 'Expanded uncertainty U, coverage 95 %',
  },
};
