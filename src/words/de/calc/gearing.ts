import type { Words } from '../../keys.ts';
import { noSlip } from './shared.ts';

const rolling = [
  'die angetriebenen Räder rollen ohne Schlupf',
  'dynamischer Halbmesser: Weg bei einer Umdrehung, geteilt durch 2π',
  noSlip,
];

/** Tyres and gearing. */
export const gearing: Words['calc'] = {
  'tyre-diameter': {
    title: 'Durchmesser eines Reifens, nach seiner Bezeichnung',
    inputs: { w: 'Querschnittsbreite', AR: 'Querschnittsverhältnis', d: 'Felgendurchmesser' },
    assumptions: [
      'Auslegungsmaß eines neuen Reifens ohne Last; je nach Hersteller weicht es um einige Prozent ab',
      'der Felgendurchmesser der Bezeichnung ist der Nenndurchmesser, in Zoll zu 25,4 mm',
    ],
    caution:
      'Auch ein Reifen mit richtigem Durchmesser kann die falsche Tragfähigkeitskennzahl oder das falsche Geschwindigkeitssymbol haben oder bei vollem Lenkeinschlag anstreifen.',
    requires: ['das Querschnittsverhältnis ist keine Prozentangabe: 55 % ist mit 55 bezeichnet'],
  },
  'rolling-radius-loss': {
    title: 'Verlust an Halbmesser unter Last',
    inputs: { D: 'Durchmesser nach der Bezeichnung', r: 'Halbmesser unter Last' },
    assumptions: [
      'Halbmesser von der Radmitte senkrecht zum ebenen Boden gemessen, bei Druck und Last des Gebrauchs',
      'der unbelastete Halbmesser ist die Hälfte des Durchmessers nach der Bezeichnung, nicht gemessen',
      'der für die Geschwindigkeit maßgebende Halbmesser liegt zwischen dem belasteten und dem unbelasteten',
    ],
    caution:
      'Ein großer Verlust kann heißen, dass der Reifen überlastet ist oder zu wenig Druck hat; dann wird er zu heiß und versagt.',
    requires: [
      'der Halbmesser unter Last ist so groß wie der Durchmesser: Wurde ein Durchmesser abgelesen?',
    ],
  },
  'overall-ratio': {
    title: 'Gesamtübersetzung',
    inputs: {
      i_g: 'Übersetzung des Gangs',
      i_t: 'Übersetzung des Verteilergetriebes',
      i_f: 'Übersetzung des Achsantriebs',
    },
    assumptions: [
      'jede Übersetzung ist die Zahl der Umdrehungen am Eingang je Umdrehung am Ausgang',
      'kein Verteilergetriebe, wenn dessen Übersetzung nicht angegeben ist',
      noSlip,
    ],
  },
  'engine-speed': {
    title: 'Motordrehzahl bei einer Fahrgeschwindigkeit',
    inputs: { v: 'Fahrgeschwindigkeit', G: 'Gesamtübersetzung', r: 'dynamischer Halbmesser' },
    assumptions: rolling,
  },
  'road-speed': {
    title: 'Fahrgeschwindigkeit bei einer Motordrehzahl',
    inputs: { n: 'Motordrehzahl', G: 'Gesamtübersetzung', r: 'dynamischer Halbmesser' },
    assumptions: rolling,
    caution:
      'Was die Übersetzung an Geschwindigkeit hergibt, lassen Reifen, Bremsen, Gelenkwelle oder Gesetz noch nicht zu.',
  },
  gradeability: {
    title: 'Größte Steigung nach dem Motordrehmoment',
    inputs: {
      T: 'Motordrehmoment',
      G: 'Gesamtübersetzung in diesem Gang',
      eta: 'Wirkungsgrad des Antriebsstrangs',
      r: 'Halbmesser der angetriebenen Räder unter Last',
      m: 'Masse des Fahrzeugs',
      f: 'Rollwiderstand als Anteil des Gewichts',
    },
    assumptions: [
      'gleichmäßige Kriechfahrt: keine Beschleunigung und kein Luftwiderstand',
      'alle angetriebenen Räder haften; an den meisten Steigungen endet die Haftung vor dem Drehmoment',
      'Motordrehmoment bei der Drehzahl, die sich in diesem Gang einstellt, ohne schleifende Kupplung',
      'Steigung als Höhe durch Grundlänge, wie auf Verkehrszeichen: 100 % sind 45°',
    ],
    caution:
      'Die Zahl betrifft nur das Drehmoment. Auch an einer viel kleineren Steigung kann ein Fahrzeug die Haftung verlieren, zurückrutschen oder umkippen, und die Bremsen müssen es dort halten.',
    requires: [
      'der Wirkungsgrad liegt über 100 %',
      'die Zugkraft an den Rädern überwindet den Rollwiderstand nicht',
      'die Zugkraft an den Rädern ist so groß wie das Gewicht: Die Haftung begrenzt die Steigung, nicht der Motor',
    ],
  },
};
