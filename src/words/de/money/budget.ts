import type { Words } from '../../keys.ts';

export const budget: Words['money']['budget'] = {
  title: 'Budget',
  description: (project) =>
    `Was ${project} kosten darf, gekostet hat und kosten wird, und wie jede Summe zustande kommt.`,
  document: 'Budget',
  lead: 'Was vorgesehen war, was ausgegeben ist und was noch kommt. Beträge in Klammern beruhen auf Schätzungen. Alle Kostenzeilen stehen im {costs}.',
  costSheet: 'Kostenblatt',
  overTime: 'Im Lauf der Zeit',
  by: { phase: 'Nach Phase', category: 'Nach Kategorie' },
  positionsLabel: { phase: 'Budget nach Phase', category: 'Budget nach Kategorie' },
  forecastTitle: 'Wie die Prognose entsteht',
  changesTitle: 'Nachträge zum Budget',
  changesRule: {
    phase:
      'Nach Datum geordnet. Eine Zeile gilt, bis eine spätere für dieselbe Phase folgt; die frühere bleibt stehen, wie sie geschrieben wurde.',
    category:
      'Nach Datum geordnet. Eine Zeile gilt, bis eine spätere für dieselbe Kategorie folgt; die frühere bleibt stehen, wie sie geschrieben wurde.',
  },
  inEntry: {
    label: 'Budget',
    more: 'Wie sich jede Summe Phase für Phase zusammensetzt, steht auf der {page}, mit heutigem Stand.',
    page: 'Budgetseite',
  },
  columns: {
    budget: 'Budget',
    spent: 'Ausgegeben',
    ordered: 'Bestellt',
    toBuy: 'Noch zu kaufen',
    forecast: 'Prognose',
    over: 'Über Budget',
  },
  finished: 'fertig',
  inAll: 'Insgesamt',
  noPhase: 'Ohne Phase',
  summary: {
    label: 'Budget',
    budget: 'Budget',
    spent: 'Ausgegeben, Gutschriften abgezogen',
    ordered: 'Bestellt, noch nicht bezahlt',
    toBuy: 'Noch zu kaufen, geschätzt',
    unpriced: (count) => `${count} weitere ohne Schätzung`,
    forecast: 'Prognose bei Fertigstellung, geschätzt',
    sumOfThese: 'Summe aus diesen, jede Grenze für sich:',
    position: (name, middle, range) => `${name}: ${middle}, ${range}`,
    contingency: 'Rücklage für Unvorhergesehenes',
    used: 'Davon nach der Prognose verbraucht',
    lessLines: (forecast, budget) =>
      `Prognose abzüglich der Budgetzeilen, soweit das über null liegt: ${forecast} − ${budget}.`,
    atItsEnds: (low, high) => `Am unteren und am oberen Ende: ${low} und ${high}.`,
    beyond: (amount) => `Das ist um ${amount} mehr, als vorhanden ist.`,
    left: (amount) => `Davon blieben ${amount} übrig.`,
  },
  changes: {
    label: 'Budgetzeilen',
    for: 'Für',
    change: 'Nachtrag',
    firstLine: 'erste Zeile',
  },
  habit: {
    label: 'Abgeschlossene Phasen neben ihrem Budget',
    phase: 'Abgeschlossene Phase',
    ratio: 'Ausgegeben / Budget',
    median: 'Median',
  },
  curve: {
    spent: 'ausgegeben, Gutschriften abgezogen',
    budget: 'gestuft: das Budget, ohne die Rücklage',
    planned:
      'schräg: das Budget, wenn jede Phase das ihre gleichmäßig zwischen ihren geplanten Tagen ausgäbe',
    forecast: (day) =>
      `Prognose ab ${day}: die Mitte gestrichelt, unteres und oberes Ende schmal, wo sie auseinanderliegen`,
    endPlanned: (day) => `Die Prognose endet am letzten geplanten Fertigstellungstag, ${day}.`,
    endPassed:
      'Der letzte geplante Fertigstellungstag ist vorbei, daher hat das Ende der Prognose kein Datum.',
    inNumbers: 'Dasselbe in Zahlen',
    label: 'Budget und Ausgaben nach Monat',
    atTheEndOf: 'Am Ende von',
    plannedSpending: 'Geplante Ausgaben',
    whenDone: (low, middle, high) =>
      `Prognose bei Fertigstellung: unten (${low}), Mitte (${middle}), oben (${high}).`,
    nothing: 'nichts',
    title: ({ from, today, budget, spent }) =>
      `Geld vom ${from} bis zum ${today}; Budget ${budget}, gestrichelt; ausgegeben ${spent}, breit.`,
    titleWithForecast: ({ from, today, budget, spent, low, high }) =>
      `Geld vom ${from} bis zum ${today}; Budget ${budget}, gestrichelt; ausgegeben ${spent}, breit; Prognose ${low} bis ${high}, vom unteren zum oberen Ende.`,
  },
};
