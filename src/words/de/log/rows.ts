import type { Words } from '../../keys.ts';

const partsOf = (count: number) => (count === 1 ? '1 Teil' : `${count} Teile`);
const readingsOf = (count: number) => (count === 1 ? '1 Messung' : `${count} Messungen`);

export const rows: Words['log']['rows'] = {
  reading: (spec) => `Messung: ${spec}`,
  search: (part) => `Gesucht: ${part}`,
  budget: (of) => `Budget: ${of}`,
  contingency: 'Unvorhergesehenes',
  wait: (what) => `Gewartet: ${what}`,
  amountFor: (amount, of) => `${amount} für ${of}`,
  waits: (phase, what) => `${phase} wartet: ${what}`,
  steps: {
    wanted: (day) => `gesucht ${day}`,
    ordered: (day) => `bestellt ${day}`,
    got: (day) => `erhalten ${day}`,
    fitted: (day) => `eingebaut ${day}`,
    scrapped: (day) => `verschrottet ${day}`,
    sold: (day) => `verkauft ${day}`,
  },
  takenBack: (what) => `Zurückgenommen: ${what}`,
  less: (added, takenBack) => `${added}, abzüglich ${takenBack} zurückgenommen`,
  fitted: (count) => `${partsOf(count)} eingebaut`,
  fittedSoFar: (count) => `${partsOf(count)} bisher eingebaut`,
  read: readingsOf,
  readSoFar: (count) => `${readingsOf(count)} bisher`,
};
