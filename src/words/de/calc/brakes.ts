import type { Words } from '../../keys.ts';

const ofGravity =
  'Verzögerung als Anteil der Normfallbeschleunigung, wie Abbremsungen angegeben werden';
const leftOut = 'Luftwiderstand und die Höhenänderung durch das Einfedern bleiben außer Betracht';
const noShare = 'die Verzögerung ist kein Anteil der Fallbeschleunigung: 0,8, nicht 8';
const z = 'Verzögerung als Anteil der Fallbeschleunigung';
const h = 'Höhe des Schwerpunkts';

export const brakes: Words['calc'] = {
  'brake-line-pressure': {
    title: 'Bremsleitungsdruck',
    inputs: {
      F: 'Kraft am Pedal',
      i: 'Pedalübersetzung',
      D: 'Bohrung des Hauptzylinders',
    },
    assumptions: [
      'kein Bremskraftverstärker: Ist einer da, die Kraft an der Druckstange und eine Pedalübersetzung von 1 einsetzen',
      'keine Verluste in Pedal, Dichtungen oder Rückholfedern',
      'ein Tandem-Hauptzylinder hat diesen Druck in jedem Kreis',
    ],
    caution:
      'Luft, Hitze, ein gequollener Schlauch oder eine verschlissene Dichtung mindern den Druck, der an den Rädern ankommt. Bremsen, an denen gearbeitet wurde, vor der Fahrt auf der Straße erproben.',
  },
  'pedal-ratio': {
    title: 'Pedalübersetzung',
    inputs: {
      l_p: 'Abstand vom Drehpunkt zur Mitte der Trittplatte',
      l_r: 'Abstand vom Drehpunkt zur Druckstange',
    },
    assumptions: [
      'beide Abstände gerade vom Drehpunkt aus, rechtwinklig zur dortigen Kraft',
      'die Druckstange steht in dem Teil des Wegs, auf den es ankommt, rechtwinklig zu ihrem Hebel',
    ],
    caution:
      'Eine größere Übersetzung braucht auch mehr Weg: Das Pedal darf nicht am Boden ankommen, bevor die Bremsen voll wirken.',
    requires: ['die Druckstange liegt weiter vom Drehpunkt als die Trittplatte'],
  },
  'brake-force': {
    title: 'Bremskraft eines Rads',
    inputs: {
      p: 'Leitungsdruck',
      A: 'Kolbenfläche auf einer Seite der Scheibe',
      mu: 'Reibwert der Beläge',
      r_e: 'wirksamer Halbmesser der Scheibe',
      R: 'Halbmesser des Reifens unter Last',
    },
    assumptions: [
      'Kolbenfläche auf einer Seite der Scheibe: beim Schwimmsattel die des einen Kolbens, beim Festsattel die der Kolben auf einer Seite',
      'an beiden Belägen derselbe Reibwert, heiß wie kalt',
      'wirksamer Halbmesser: von der Nabenmitte zur Mitte des Belags',
      'das Rad blockiert nicht: Über die Haftung des Reifens hinaus wird die Kraft nicht erreicht',
    ],
    caution:
      'Der Reibwert der Beläge sinkt bei Hitze und Nässe. Eine berechnete Kraft ist kein Beweis dafür, dass ein Fahrzeug zum Stehen kommt.',
    requires: [
      'der Reibwert der Beläge liegt über 1',
      'der wirksame Halbmesser der Scheibe ist so groß wie der Reifen',
    ],
  },
  'brake-balance': {
    title: 'Anteil der Vorderachse an der Bremskraft',
    inputs: { B_f: 'Bremskraft der Vorderachse', B_r: 'Bremskraft der Hinterachse' },
    assumptions: [
      'beide Kräfte bei derselben Pedalkraft, bevor ein Rad blockiert',
      'Kraft einer Achse: beide Räder zusammen',
    ],
    caution:
      'Ein Fahrzeug, dessen Hinterräder vor den Vorderrädern blockieren, schleudert. Die Verteilung bei starker Bremsung mit der idealen vergleichen, leer und beladen.',
    requires: ['keine der beiden Achsen bremst'],
  },
  'load-transfer': {
    title: 'Achslastverlagerung nach vorn beim Bremsen',
    inputs: { m: 'Masse des Fahrzeugs', z, h, L: 'Radstand' },
    assumptions: [
      'zwei Achsen, ebene Straße, gleichmäßige Verzögerung',
      ofGravity,
      leftOut,
      'die Hinterräder bleiben am Boden',
    ],
    caution:
      'Bremsen, die auf eine zu kleine Lastverlagerung abgestimmt sind, lassen die Hinterräder blockieren, und das Fahrzeug schleudert.',
    requires: [noShare],
  },
  'ideal-brake-balance': {
    title: 'Idealer Anteil der Vorderachse an der Bremskraft',
    inputs: {
      W_f: 'Vorderachslast im Stand',
      W_r: 'Hinterachslast im Stand',
      z,
      h,
      L: 'Radstand',
    },
    assumptions: [
      'zwei Achsen, ebene Straße, Geradeausfahrt, gleichmäßige Verzögerung',
      ofGravity,
      'die Reifen beider Achsen haften gleich',
      leftOut,
    ],
    caution:
      'Wird hinten mehr gebremst als so, blockieren zuerst die Hinterräder, und das Fahrzeug schleudert. Das Ideal ändert sich mit Beladung und Straße: den ungünstigsten Fall betrachten.',
    requires: [noShare, 'die Hinterräder würden bei dieser Verzögerung abheben'],
  },
};
