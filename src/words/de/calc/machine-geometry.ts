import type { Words } from '../../keys.ts';

const testBar = {
  N0: 'Anzeige nahe der Spindelnase, Spindel bei 0°',
  N180: 'Anzeige nahe der Spindelnase, Spindel bei 180°',
  F0: 'Anzeige am fernen Ende, Spindel bei 0°',
  F180: 'Anzeige am fernen Ende, Spindel bei 180°',
  L: 'Verfahrweg des Bettschlittens zwischen nah und fern',
};

const barAssumptions = [
  'der Prüfdorn hat an beiden Stellen denselben Durchmesser; er darf krumm sein oder schief sitzen',
  'Spindel von Hand gedreht; Messuhr auf dem Bettschlitten, dazwischen nicht berührt',
  'der Prüfdorn biegt sich nicht unter seinem Eigengewicht durch, was bei senkrechten Messungen zählt',
  'positiv, wenn die Messuhr am fernen Ende mehr anzeigt',
];

export const machineGeometry: Words['calc'] = {
  'spindle-alignment': {
    title: 'Spindelachse zum Bettschlitten, mit Prüfdorn',
    inputs: { ...testBar, L_r: 'Länge, auf die die Abweichung bezogen wird' },
    assumptions: barAssumptions,
  },
  'spindle-alignment-angle': {
    title: 'Winkel der Spindelachse zum Bettschlitten, mit Prüfdorn',
    inputs: testBar,
    assumptions: barAssumptions,
  },
  'bed-twist': {
    title: 'Verwindung eines Betts, mit Richtwaage auf einer Brücke',
    inputs: {
      s1: 'Anzeige der Richtwaage an der ersten Stelle',
      s2: 'Anzeige der Richtwaage an der zweiten Stelle',
      B: 'Länge der Brücke quer über die Führungsbahnen',
    },
    assumptions: [
      'die Richtwaage steht an beiden Stellen auf derselben Brücke und in derselben Richtung, so dass sich ihr Nullpunktfehler heraushebt',
      'Teilstriche der Libelle wurden in eine Neigung umgerechnet: 3 Teilstriche zu 0,02 mm/m sind 0,06 mm/m',
      'positiv, wenn die Seite, die die Richtwaage als die höhere anzeigt, von der ersten zur zweiten Stelle ansteigt',
    ],
  },
  'taper-two-collars': {
    title: 'Kegel, den eine Drehmaschine dreht, aus zwei Bunden',
    inputs: {
      D1: 'Durchmesser des Bunds am Futter',
      D2: 'Durchmesser des Bunds am Ende',
      L: 'Abstand der Bunde',
    },
    assumptions: [
      'beide Bunde mit einem Werkzeug in einer Einstellung gedreht, letzter Span leicht, ohne Reitstock',
      'die Stange ist steif genug, um am freien Ende nicht nachzugeben',
      'das Werkzeug verschleißt zwischen den Bunden nicht',
      'positiv, wenn das Ende dünner ist als die Futterseite; gerechnet ist Halbmesser durch Länge, also der halbe Kegel im Durchmesser',
    ],
  },
  runout: {
    title: 'Schlag (Gesamtausschlag der Messuhr)',
    inputs: { readings: 'Anzeige der Messuhr bei einer Umdrehung' },
    assumptions: [
      'der größte und der kleinste Wert einer vollen Umdrehung sind unter den Messwerten',
      'die Messuhr steht rechtwinklig zur Oberfläche und wurde dazwischen nicht berührt',
    ],
  },
  eccentricity: {
    title: 'Außermittigkeit, aus dem Schlag',
    inputs: { TIR: 'Gesamtausschlag der Messuhr' },
    assumptions: ['die Oberfläche selbst ist rund: Der ganze Ausschlag kommt vom Versatz'],
  },
};
