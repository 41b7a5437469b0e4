import type { Words } from '../../keys.ts';

const lead = (how: string, tools: string) =>
  `{total}, ${how}. Werkstattwerkzeug ist ${tools}, die eigene Arbeit nicht. {corrections} bleiben sichtbar, durchgestrichen. Was nicht zählt, ist {apart}.`;

export const costs: Words['money']['costs'] = {
  title: 'Kosten',
  description: (project) =>
    `Jede Kostenzeile von ${project}, mit Summen nach Kategorie, Phase und Herkunft.`,
  document: 'Kostenbuch',
  lead,
  leadWithBudget: (how, tools) =>
    `${lead(how, tools)} Was geplant war und was noch kommt, steht im {budget}.`,
  corrections: 'Berichtigungen',
  shownApart: 'gesondert aufgeführt',
  budget: 'Budget',
  tools: {
    in: 'mitgezählt',
    out: 'nicht mitgezählt',
    percent: (percent) => `mit ${percent} % mitgezählt`,
  },
  download: 'Werkstattbuch herunterladen',
  spending: 'Breite Linie: ausgegeben, Gutschriften abgezogen. Jede Stufe ist unten eine Zeile.',
  spendingTitle: (from, to, spent) =>
    `Ausgaben vom ${from} bis zum ${to}, Gutschriften abgezogen: ${spent}.`,
  byCategory: 'Nach Kategorie',
  byPhase: 'Nach Phase',
  bySource: 'Nach Herkunft',
  really: 'Was alles wirklich gekostet hat',
  byPart: 'Kosten nach Teil',
  donorAccount: 'Abrechnung der Spendermaschine: {donor}',
  allRows: 'Alle Zeilen',
  allRowsRule:
    'Nach Datum geordnet, mit dem Stand bis hier. Der Stand in einem Eintrag ist der in der letzten Zeile seines Tages, sofern seither keine Zeile berichtigt wurde: Ein Eintrag zählt, was an seinem Tag galt.',
  allRowsLabel: 'Alle Kostenzeilen',
  rowsLabel: 'Kostenzeilen',
  category: 'Kategorie',
  running: 'Stand bis hier',
  ofItTax: (tax) => `davon ${tax} Steuer`,
  forOtherWork: (amount) => `${amount} für andere Arbeiten`,
  notCounted: 'nicht mitgezählt',
  rates: {
    title: 'Festgehaltene Wechselkurse',
    rule: 'Ein Betrag in anderer Währung zählt zum neuesten Kurs an oder vor seinem Tag, kaufmännisch auf die kleinste Münzeinheit gerundet.',
    label: 'Wechselkurse',
    rate: 'Kurs',
    read: 'Wo er abgelesen wurde',
  },
  perHour: {
    title: 'Je Stunde',
    rule: 'Geld geteilt durch Arbeitsstunden, für jede Phase; kaufmännisch auf die kleinste Münzeinheit gerundet.',
    label: 'Geld je Stunde',
    money: 'Geld',
    all: 'Alle',
  },
  apart: {
    title: 'Gesondert aufgeführt',
    gifts: 'Geschenke, zum angegebenen Wert',
    trades: 'Eingetauscht, zum angegebenen Wert',
    toolsOut: 'Nicht mitgezähltes Werkstattwerkzeug',
    elsewhere: 'Anteile für andere Arbeiten',
    counted: 'mitgezählt, nach der Regel des Projekts',
    notCounted: 'nicht mitgezählt',
    labour: 'Eigene Arbeit',
    labourRule: (hours, person, rate) =>
      `${hours} von ${person} zu ${rate} je Stunde; nie in den Ausgaben enthalten`,
    noRate: 'kein Stundensatz angegeben',
  },
  believed: {
    label: 'Einträge, die den damaligen Kenntnisstand zeigen',
    runsTo: 'Stand im Werkstattbuch',
    less: 'Abzüglich, später aufgeschrieben',
    and: 'Zuzüglich, später ersetzt',
    shows: 'Der Eintrag zeigt',
  },
};
