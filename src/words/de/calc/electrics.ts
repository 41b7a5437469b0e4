import type { Words } from '../../keys.ts';

export const electrics: Words['calc'] = {
  'volt-drop-share': {
    title: 'Spannungsabfall als Anteil der Versorgungsspannung',
    inputs: { dU: 'Spannungsabfall', U: 'Versorgungsspannung' },
    assumptions: [
      'beide Spannungen unter Last gemessen; ohne Strom gibt es keinen Abfall',
      'der Abfall ist der des ganzen Wegs, hin und zurück, wenn der Kennwert nicht sagt, welcher Abschnitt gemeint ist',
    ],
    caution:
      'Eine Verbindung, an der bei großem Strom Spannung abfällt, wird heiß und kann einen Brand auslösen.',
    requires: ['der Abfall ist größer als die Versorgungsspannung'],
  },
  'insulation-leak': {
    title: 'Ableitstrom durch eine Isolierung',
    inputs: { U: 'Spannung an der Isolierung', R: 'Isolationswiderstand' },
    assumptions: [
      'Gleichspannung, nachdem der Ladestrom abgeklungen ist',
      'Widerstand etwa mit dieser Spannung gemessen: Eine feuchte oder rissige Isolierung lässt bei höherer Spannung mehr durch',
      'eine Wechselspannung treibt außerdem einen kapazitiven Strom, der hier außer Betracht bleibt',
    ],
    caution:
      'Ein Prüfgerät legt Hunderte Volt an die Leitungen, und Leitungen halten ihre Ladung. Ein kleiner hier errechneter Ableitstrom macht einen Netz- oder Hochspannungskreis nicht berührungssicher.',
  },
};
