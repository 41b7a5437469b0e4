import type { Words } from '../../keys.ts';

const places = { places: 'Messwert an einer Stelle' };

export const sheet: Words['calc'] = {
  'place-mean': {
    title: 'Mittelwert über mehrere Stellen',
    inputs: places,
    assumptions: ['die Stellen stehen für das ganze Blech'],
  },
  'place-least': {
    title: 'Kleinster Wert mehrerer Stellen',
    inputs: places,
    assumptions: ['die dünnste Stelle war unter den gemessenen'],
    caution:
      'Tragende Teile versagen an der Stelle, die niemand gemessen hat. Tragendes Blech von einer Fachkraft beurteilen lassen.',
  },
  'place-spread': {
    title: 'Spannweite über mehrere Stellen, größter minus kleinster Wert',
    inputs: places,
    assumptions: [
      'die Stellen mit dem größten und dem kleinsten Wert waren unter den gemessenen',
      'sie wächst mit der Zahl der Stellen: Spannweiten nur über dieselben Stellen vergleichen',
    ],
  },
  'place-deviation': {
    title: 'Standardabweichung über mehrere Stellen',
    inputs: places,
    assumptions: [
      'die Stellen stehen für das ganze Blech',
      'sie sagt, wie ungleichmäßig das Blech ist, nicht, wie genau sein Mittelwert bekannt ist',
    ],
  },
  'sheet-loss': {
    title: 'Dickenverlust, bezogen auf die Nenndicke',
    inputs: { t_nom: 'Nenndicke', t: 'gemessene Dicke' },
    assumptions: [
      'die Nenndicke ist die des Blechs im Neuzustand: Schon neues Blech kann um einige Prozent abweichen',
      'Farbe, Spachtel und Zunder sind entfernt, oder das Messgerät erfasst nur das Metall',
      'ein Verlust unter null heißt, dass das Blech dicker ist als seine Nenndicke, und bleibt so stehen',
    ],
    caution:
      'Eine Stelle sagt nichts über die nächste. Wie viel Verlust ein tragendes Teil haben darf, entscheidet eine Fachkraft.',
  },
};
