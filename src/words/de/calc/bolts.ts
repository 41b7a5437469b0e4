import type { Words } from '../../keys.ts';

const d = 'Nenndurchmesser des Gewindes';
const nominalSizes = 'es gelten die Nennmaße, nicht am verschlissenen Gewinde gemessene';
const threadIsWeakest =
  'der Gewindeteil ist die schwächste Stelle: kein Dehnschaft, keine Durchgangsbohrung';
const wornThread =
  'Ein verrostetes, gelängtes oder untermaßig geschnittenes Gewinde ist schwächer, als sein Nennquerschnitt angibt.';
const pitchTooLarge = 'die Steigung ist so groß wie der Durchmesser';
const K = 'Drehmomentbeiwert';
const usualFactors =
  'Drehmomentbeiwert etwa 0,20 für blanken trockenen Stahl, 0,15 geölt, 0,10 mit Hochdruckschmierstoff, 0,30 oder mehr bei verschmutztem Gewinde';

export const bolts: Words['calc'] = {
  'bolt-stress-area': {
    title: 'Spannungsquerschnitt eines metrischen Gewindes',
    inputs: { d, P: 'Steigung des Gewindes' },
    assumptions: ['metrisches ISO-Gewinde mit 60° Flankenwinkel', nominalSizes, threadIsWeakest],
    caution: wornThread,
    requires: [pitchTooLarge],
  },
  'bolt-stress-area-unified': {
    title: 'Spannungsquerschnitt eines UN-Gewindes (Zollgewinde)',
    inputs: { d, P: 'Steigung (ein Zoll geteilt durch die Gangzahl je Zoll)' },
    assumptions: [
      'UN-Gewinde mit 60° Flankenwinkel, UNC oder UNF; die Steigung ist 1 in geteilt durch die Gangzahl je Zoll',
      nominalSizes,
      threadIsWeakest,
    ],
    caution: wornThread,
    requires: [pitchTooLarge],
  },
  'bolt-proof-load': {
    title: 'Prüfkraft einer Schraube',
    inputs: { A_s: 'Spannungsquerschnitt', S_p: 'Prüfspannung der Schraube' },
    assumptions: [
      'Prüfspannung nach ISO 898-1: Festigkeitsklasse 8.8 hat 580 MPa bis M16 und 600 MPa darüber, Klasse 10.9 hat 830 MPa',
      'Prüfspannung nach SAE J429: Grade 2 hat 55 000 psi von ¼ bis ¾ in und 33 000 psi von ⅞ bis 1½ in; Grade 5 hat 85 000 psi von ¼ bis 1 in und 74 000 psi von 1⅛ bis 1½ in; Grade 8 hat 120 000 psi von ¼ bis 1½ in',
      'die Schraube ist, was ihre Kopfmarkierung sagt, neu und gerade auf Zug belastet',
      'die Mutter oder das Gewindeloch hält mindestens ebenso viel',
    ],
    caution:
      'Eine Schraube ohne Markierung oder eine schon einmal gelängte hat keine Prüfkraft. Eine falsche Festigkeitsklasse kann dazu führen, dass sich ein Rad, eine Bremse oder eine angehobene Last löst.',
  },
  'bolt-preload': {
    title: 'Vorspannkraft einer Schraube, als Anteil ihrer Prüfkraft',
    inputs: { F_p: 'Prüfkraft der Schraube', s: 'Anteil der Prüfkraft' },
    assumptions: [
      '75 % für eine Verbindung, die wieder gelöst wird; 90 % für eine, die bleibt',
      'die verspannten Teile und das Gewinde im Teil halten mindestens so viel wie die Schraube',
    ],
    caution:
      'Eine Angabe des Herstellers für die Verbindung geht dieser vor. Für Räder, Bremsen, Lenkung und Motorlager gibt es solche Angaben.',
    requires: ['der Anteil ist mehr als die ganze Prüfkraft'],
  },
  'bolt-torque': {
    title: 'Anziehdrehmoment einer Schraube',
    inputs: { K, d, F: 'Vorspannkraft' },
    assumptions: [
      usualFactors,
      'das Drehmoment wird abgelesen, während sich die Schraube oder Mutter dreht',
      'keine Sicherungsmutter und kein Gewindeeinsatz, der von sich aus schwer geht',
    ],
    caution:
      'Dasselbe Drehmoment ergibt je nach Reibung etwa 30 % mehr oder weniger Zugkraft. Eine geölte Schraube, mit dem Drehmoment für trockene angezogen, kann gelängt werden oder reißen; eine verrostete kann lose bleiben. Eine Angabe des Herstellers geht dieser vor.',
  },
  'bolt-tension': {
    title: 'Zugkraft einer Schraube, aus ihrem Drehmoment',
    inputs: { T: 'Anziehdrehmoment', K, d },
    assumptions: [
      usualFactors,
      'das Drehmoment wurde abgelesen, während sich die Schraube oder Mutter drehte; steht sie schon still, sagt es weniger',
      'die Verbindung hat sich seither nicht gesetzt',
    ],
    caution:
      'Die so bestimmte Zugkraft ist auf etwa 30 % nach oben und unten genau. Nicht darauf verlassen, wo eine Schraube, die nachgibt, jemanden verletzen kann.',
  },
};
