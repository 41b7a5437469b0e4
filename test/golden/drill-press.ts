import { projectOf, type Written } from '../book/project-of.ts';

// A project as small as a drawing of each sort allows: three phases (one late, one under way, one not begun), two specs
// (one with U and limits, one read with an instrument that states nothing), money in two currencies and a sale.

const phase = (
  id: string,
  name: string,
  start: string,
  finish: string,
  hours: string,
): Written => ({
  ...{ id, name, summary: 'A stretch of the work.' },
  ...{ 'planned-start': start, 'planned-finish': finish, 'planned-hours': hours },
});
const hours = (id: string, date: string, length: string, phaseId: string): Written => ({
  ...{ id, date, hours: length, phase: phaseId, work: 'fitting', what: 'Worked on it' },
});
const cost = (id: string, date: string, amount: string, rest: Written = {}): Written => ({
  ...{ id, date, amount, category: 'part', phase: 'strip', what: 'A thing' },
  ...rest,
});
const reading = (
  id: string,
  spec: string,
  date: string,
  state: string,
  values: string,
): Written => ({
  ...{ id, spec, date, state, values },
  ...(spec === 'spindle-load'
    ? { unit: 'kg', instrument: 'scale' }
    : { unit: 'µm', instrument: 'old-dial' }),
});
const entry = (title: string, date: string): Written => ({
  ...{ title, date, phase: 'strip', summary: 'Something was done.' },
});

/** The project of the golden drawings. */
export const drillPress = projectOf({
  lists: {
    sources: [{ id: 'base', kind: 'base', name: 'The press' }],
    phases: [
      {
        ...phase('strip', 'Strip & clean', '2025-03-01', '2025-03-31', '10:00'),
        finished: '2025-04-12',
      },
      phase('spindle', 'Spindle and bearings', '2025-04-01', '2025-05-31', '24:30'),
      phase('paint', 'Paint', '2025-06-01', '2025-06-20', '8:00'),
    ],
    hours: [
      hours('h-1', '2025-03-08', '4:00', 'strip'),
      hours('h-2', '2025-04-12', '7:45', 'strip'),
      hours('h-3', '2025-04-26', '12:15', 'spindle'),
    ],
    costs: [
      cost('c-1', '2025-03-01', '180.00', { category: 'vehicle' }),
      cost('c-2', '2025-03-20', '64.50 EUR'),
      cost('c-3', '2025-04-14', '45.00', { kind: 'sale' }),
      cost('c-4', '2025-05-03', '120.25', { phase: 'spindle' }),
    ],
    rates: [
      { id: 'x-1', date: '2025-03-19', from: 'EUR', to: 'GBP', rate: '0.84', source: 'a bank' },
    ],
    specs: [
      {
        ...{ id: 'spindle-load', name: 'Load to turn the spindle', about: 'Pull at the handle.' },
        ...{ quantity: 'mass', unit: 'kg', system: 'spindle' },
        ...{ min: '2.0 kg', max: '3.0 kg', target: '2.4 kg' },
      },
      {
        ...{ id: 'run-out', name: 'Run-out of the chuck', about: 'Over one turn.' },
        ...{ quantity: 'length', unit: 'µm', system: 'spindle' },
      },
    ],
    instruments: [
      {
        id: 'scale',
        name: 'Spring scale',
        quantity: 'mass',
        step: '0.05 kg',
        'stated-error': '0.1 kg',
      },
      { id: 'old-dial', name: 'An old dial', quantity: 'length' },
    ],
    readings: [
      reading('r-1', 'spindle-load', '2025-03-02', 'as-found', '3.85 3.90 3.80'),
      reading('r-2', 'spindle-load', '2025-04-20', 'before', '3.60'),
      reading('r-3', 'spindle-load', '2025-05-03', 'after', '2.80 2.85 2.75'),
      reading('r-4', 'run-out', '2025-03-02', 'as-found', '140'),
      reading('r-5', 'run-out', '2025-05-03', 'after', '30'),
    ],
  },
  entries: [
    entry('Home', '2025-03-01'),
    entry('In pieces', '2025-04-12'),
    entry('True again', '2025-05-03'),
  ],
});
