import type { Words } from '../keys.ts';
import { columns } from './marks/columns.ts';
import { data } from './marks/data.ts';
import { page } from './marks/page.ts';
import { tables } from './marks/tables.ts';

export const marks: Words['marks'] = {
  page,
  data,
  tables,
  columns,
  table: { label: 'Prüfmarken', rows: 'Zeilen', root: 'Wurzel', signedBy: 'Signiert von' },
  rows: (shown, count) => `${shown} ${count === 1 ? 'Zeile' : 'Zeilen'}`,
  ownKey: 'dem Schlüssel unten',
  nobody: 'niemandem',
  withheld: 'zurückgehalten',
  withheldTogether: (rows) =>
    rows === 1
      ? '1 Zeile mit zurückgehaltenem Betrag'
      : `${rows} Zeilen mit zurückgehaltenen Beträgen, zusammen`,
  withheldNote: (rows) =>
    rows === 1
      ? '1 Zeile mit zurückgehaltenem Betrag ist keiner Maschine und keinem Teil zugeordnet; sie steht bei dem, was weder Maschine noch Teil nennt.'
      : `${rows} Zeilen mit zurückgehaltenen Beträgen sind keiner Maschine und keinem Teil zugeordnet; sie stehen bei dem, was weder Maschine noch Teil nennt.`,
  replaced: {
    by: 'ersetzt durch {row} am {day}: {because}',
    withdrawn: 'zurückgenommen durch {row} am {day}: {because}',
    rateBy: 'Wechselkurs ersetzt durch {row} am {day}: {because}',
    rateWithdrawn: 'Wechselkurs zurückgenommen durch {row} am {day}: {because}',
    replaces: 'ersetzt {row}: {because}',
  },
  corrections: {
    title: 'Berichtigungen',
    description: (project) => `Falsche Zeilen von ${project}, was an ihrer Stelle gilt, und warum.`,
    none: 'Bisher wurde keine Zeile dieses Werkstattbuchs berichtigt oder zurückgenommen.',
    count: (rows) =>
      rows === 1
        ? '1 Zeile wurde berichtigt oder zurückgenommen.'
        : `${rows} Zeilen wurden berichtigt oder zurückgenommen.`,
    rule: 'Nichts Veröffentlichtes wird geändert oder entfernt. Eine falsche Zeile bleibt durchgestrichen an ihrem Platz; eine andere Zeile nennt sie und den Grund und gilt von dem Tag an, an dem sie aufgeschrieben wurde. Ein Eintrag eines früheren Tages zeigt weiterhin, wovon an jenem Tag auszugehen war.',
    believed: 'Einträge, die den damaligen Kenntnisstand zeigen',
    believedRule:
      'Von der Summe, die das heutige Werkstattbuch bis zum Tag des Eintrags ergibt, zu der Summe, die der Eintrag zeigt.',
    said: 'Berichtigt durch',
    was: 'Zeile, wie sie war',
    now: 'Was jetzt gilt',
    effect: 'Wirkung auf die Summe',
    nothing: 'nichts: Sie wurde zurückgenommen',
    noEffect: 'keine',
  },
};
