import type { Words } from '../keys.ts';
import { calculated, measured, totals } from './method/rules.ts';

export const method: Words['method'] = {
  totals,
  measured,
  calculated,
  title: 'Verfahren und Gefahren',
  description:
    'Wie die Zahlen auf diesen Seiten zustande kommen, was die Linien bedeuten und welche Gefahren die Arbeit birgt.',
  document: 'Verfahren',
  lead: 'Jede Zahl lässt sich hier öffnen: Eine unterstrichene Summe mit der angerissenen Marke führt zu den Zeilen, aus denen sie entstand, ein gemessener Wert zu seinen Messungen.',
  changed: 'geändert',
  undecided: 'unentschieden',
  reached: 'erreicht',
  lines: 'Was die Linien bedeuten',
  lineKey: {
    wide: { name: 'breit', meaning: 'gemessen, gearbeitet, ausgegeben' },
    narrow: { name: 'schmal', meaning: 'Bezug: Skalen, Maßlinien, Grenzen' },
    planned: { name: 'Strichlinie', meaning: 'geplant oder geschätzt' },
    before: { name: 'Strich-Zweipunktlinie', meaning: 'wie es vorher war' },
    centre: { name: 'Strich-Punktlinie', meaning: 'der betrachtete Tag' },
    limit: { name: 'schmal mit Schraffur an einer Seite', meaning: 'eine Grenze' },
    cut: { name: 'Zickzacklinie', meaning: 'eine unterbrochene Skala, die nicht bei null beginnt' },
  },
  hazards: 'Gefahren',
  hazardsLead:
    'Hier ist aufgezeichnet, wie in einer Werkstatt gearbeitet wurde; eine Anleitung ist das nicht. Arbeiten mit Kraftstoff, Hebezeug, Schweißgerät, Strahlmittel und Spritznebel, an Bremsen und Federn, mit Asbest, Blei, Netz- oder Batteriestrom können tödlich enden. Die Vorschriften sind von Ort zu Ort verschieden: Maßgebend sind die örtlichen Vorschriften und die Regeln der zugelassenen Fachbetriebe, und Arbeiten an Bremsen, Lenkung, Sitzverankerungen und tragenden Teilen gehören vor der Benutzung der Maschine vor einen befugten Prüfer. Die Signalwörter sind die der ANSI Z535.6: Was mit GEFAHR bezeichnet ist, führt zu Tod oder schweren Verletzungen, was mit WARNUNG bezeichnet ist, kann dazu führen; was mit VORSICHT bezeichnet ist, kann zu leichten oder mittleren Verletzungen führen.',
  signals: { DANGER: 'GEFAHR', WARNING: 'WARNUNG', CAUTION: 'VORSICHT' },
  note: (signal, hazard) => `${signal}: ${hazard}`,
  published: (site, builder) => `${site} wird herausgegeben von ${builder}.`,
  publishedWithContact: ({ site, builder, contact }) =>
    `${site} wird herausgegeben von ${builder}, ${contact}.`,
};
