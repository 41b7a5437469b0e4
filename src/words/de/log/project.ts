import type { Words } from '../../keys.ts';

export const project: Words['log']['project'] = {
  document: 'Projektblatt',
  wantedFeed: (project) => `${project}: Gesucht`,
  standing: 'Stand der Arbeit',
  finishedOn: (day) => `Fertiggestellt am ${day}.`,
  asOf: (day) => `Stand ${day}, der Tag der neuesten Zeile.`,
  underWay: 'In Arbeit: {phases}.',
  hours: 'Gearbeitete Stunden',
  money: 'Ausgegeben, Gutschriften abgezogen',
  partsKnown: 'Bekannte Teile',
  partsWanted: 'Gesuchte Teile',
  specs: 'Gemessene Kennwerte',
  taken: '{ledger} oder {dossier} drucken: alles Aufgezeichnete in einem Dokument.',
  downloadLedger: 'Das Werkstattbuch herunterladen',
  theDossier: 'das Dossier',
  ledgerIsMarked:
    'Das Werkstattbuch trägt {marked}: Eine veröffentlichte Zeile kann nicht unbemerkt geändert werden, und jeder kann das selbst nachprüfen.',
  marked: 'Prüfmarken',
  phases: 'Phasen',
  plan: 'Der Plan, und was worauf wartet',
  changes: 'Vorher und nachher',
  moneyOverTime: 'Geld im Lauf der Zeit',
  spending: 'Breit: ausgegeben, Gutschriften abgezogen. Die Zeilen stehen auf dem {costs}.',
  spendingAndBudget:
    'Breit: ausgegeben, Gutschriften abgezogen. Die Zeilen stehen auf dem {costs}, das Geplante steht im {budget}.',
  costSheet: 'Kostenblatt',
  budget: 'Budget',
  sources: 'Woher die Teile stammen',
  decided:
    'Was an ihnen gefunden wurde: {survey}. Was es sonst gab und warum jedes genommen wurde: {choices}.',
  survey: 'die Bestandsaufnahme',
  choices: 'die Entscheidungen',
  newest: 'Neueste Einträge',
  whole: (count) =>
    count === 1 ? 'Das ganze Bautagebuch, 1 Eintrag' : `Das ganze Bautagebuch, ${count} Einträge`,
};
