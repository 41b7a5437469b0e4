import type { Words } from '../../keys.ts';

export const use: Words['calc'] = {
  'power-to-mass': {
    title: 'Leistung je Masse',
    inputs: { P: 'Leistung', m: 'Masse' },
    assumptions: [
      'Höchstleistung an der Stelle, für die sie angegeben ist: Motor, Getriebeausgang oder Räder',
      'Masse wie angegeben: leer, fahrbereit oder beladen',
    ],
  },
  'fuel-used': {
    title: 'Kraftstoffverbrauch auf einer Strecke',
    inputs: { V: 'verbrauchter Kraftstoff', s: 'gefahrene Strecke' },
    assumptions: [
      'der Tank wurde vorher und nachher auf demselben Boden bis zur selben Marke gefüllt',
      'die Strecke ist die wahre: Mit anderen Reifen zeigt der Kilometerzähler falsch an',
    ],
  },
};
