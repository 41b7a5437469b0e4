import type { Words } from '../../keys.ts';

const inOnePlane = 'die vier Punkte liegen in einer Ebene: Eine Verwindung ist hier nicht zu sehen';

export const frame: Words['calc'] = {
  'squareness-diagonals': {
    title: 'Unterschied der beiden Diagonalen',
    inputs: { d_1: 'erste Diagonale', d_2: 'zweite Diagonale' },
    assumptions: [
      'gegenüberliegende Seiten sind gleich lang: Ungleiche Seiten ergeben auch in einem rechtwinkligen Rahmen ungleiche Diagonalen',
      'die vier Punkte sind auf beiden Seiten dieselben, etwa die Mitten paariger Bohrungen',
      inOnePlane,
    ],
  },
  'squareness-angle': {
    title: 'Abweichung vom rechten Winkel, aus Seiten und Diagonalen',
    inputs: {
      a: 'lange Seite',
      b: 'kurze Seite',
      d_1: 'erste Diagonale',
      d_2: 'zweite Diagonale',
    },
    assumptions: [
      'gegenüberliegende Seiten sind gleich lang; wo sie etwas abweichen, ist jede Seite das Mittel ihres Paars',
      inOnePlane,
      'positiv, wo die erste Diagonale die längere ist: Die beiden Ecken, die sie verbindet, haben weniger als 90°',
    ],
    requires: [
      'die Diagonalen unterscheiden sich mehr, als diese Seiten zulassen',
      'die Diagonalen passen nicht zu den Seiten: Eines der vier Maße wurde zwischen anderen Punkten genommen',
    ],
  },
};
