import type { Words } from '../../keys.ts';

export const engine: Words['calc'] = {
  displacement: {
    title: 'Hubraum eines Motors',
    inputs: { B: 'Bohrung', S: 'Hub', n: 'Zahl der Zylinder' },
    assumptions: [
      'alle Zylinder haben dieselbe Bohrung und denselben Hub',
      'die Kurbelwelle ist nicht gegen die Zylinderachse versetzt',
    ],
  },
  'compression-ratio': {
    title: 'Verdichtungsverhältnis',
    inputs: { V_s: 'Hubraum eines Zylinders', V_c: 'Verdichtungsraum eines Zylinders' },
    assumptions: [
      'Hubraum eines Zylinders',
      'Verdichtungsraum: Brennraum, Dichtung, Abstand zur Dichtfläche und Kolbenboden zusammen, wie mit Flüssigkeit ausgelitert',
      'geometrisches Verhältnis: Durch die Steuerzeiten ist das wirksame kleiner',
    ],
  },
  'compression-spread': {
    title: 'Spannweite einer Kompressionsprüfung',
    inputs: { pressures: 'Kompressionsdruck eines Zylinders' },
    assumptions: [
      'alle Zylinder gleich geprüft: warm, Drosselklappe offen, alle Kerzen heraus, gleiche Zahl von Hüben',
      'die Batterie hielt die Anlassdrehzahl bis zum letzten Zylinder',
      'die Liste enthält jeden Zylinder, alle mit demselben Druckmesser: Ein Skalenfehler hebt sich heraus, ein Nullpunktfehler nicht',
    ],
    caution:
      'Ein Motor, der durchgedreht wird, kann anspringen, Kraftstoff versprühen oder Funken schlagen. Kraftstoff und Zündung abstellen und Abstand von Riemen und Lüfter halten.',
  },
  'engine-power': {
    title: 'Leistung aus Drehmoment und Drehzahl',
    inputs: { T: 'Drehmoment', n: 'Drehzahl' },
    assumptions: [
      'Drehmoment und Drehzahl im selben Augenblick abgelesen',
      'Leistung an der Stelle, an der das Drehmoment gemessen wurde: Verluste dahinter sind nicht abgezogen',
      'keine Korrektur für Luftdruck oder Temperatur',
    ],
  },
};
