import type { Words } from '../../keys.ts';

const least =
  'Gebunden ist, was ausgegeben, bestellt und noch zu kaufen ist. Was fertig ist oder kein Budget hat, kostet das Gebundene.';
const over = 'Über Budget ist die Mitte abzüglich des Budgets.';

export const forecast: Words['money']['forecast'] = {
  committed: ({ spent, ordered, toBuy, sum }) =>
    `Gebunden: ausgegeben ${spent} + bestellt ${ordered} + noch zu kaufen ${toBuy} = ${sum}.`,
  toBuyBetween: (amount, range) => `${amount} (${range})`,
  finished: 'Fertig, kostet also das Gebundene.',
  noBudget: 'Ohne Budget, daher ist über das Gebundene hinaus nichts vorgesehen.',
  upToBudget: (budget) =>
    `Mindestens das Gebundene, höchstens das Budget, ${budget}, sofern dieses höher ist.`,
  ends: { low: 'Unten', middle: 'Mitte', high: 'Oben' },
  greaterOf: ({ end, least: committed, budget, ratio, product, most }) =>
    `${end}: der größere Wert von ${committed} und ${budget} × ${ratio} = ${product}: ${most}.`,
  rule: {
    byCategory: `${least} Alles Übrige liegt zwischen dem Gebundenen und dem Budget, sofern dieses höher ist: Die Zeilen gelten je Kategorie, und keine Kategorie ist vor dem Ganzen fertig. ${over}`,
    tooFew: (finished) =>
      `${least} Alles Übrige liegt zwischen dem Gebundenen und dem Budget, sofern dieses höher ist: Bisher ist ${finished === 1 ? 'erst eine' : 'noch keine'} Phase mit Budget fertig, und erst zwei lassen eine Gewohnheit erkennen. ${over}`,
    byHabit: (phases) =>
      `${least} Alles Übrige kostet mindestens das Gebundene, sonst sein Budget mal dem Verhältnis von Ausgaben zu Budget der ${phases} fertigen Phasen: das kleinste Verhältnis für das untere Ende, der Median für die Mitte, das größte für das obere Ende. ${over}`,
  },
};
