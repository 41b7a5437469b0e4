import type { Words } from '../../keys.ts';

export const orders: Words['money']['orders'] = {
  title: 'Bestellungen',
  none: 'Nichts wurde vor der Zahlung bestellt.',
  ordered: 'Bestellt',
  paidSoFar: 'Bisher bezahlt',
  stillOwed: 'Noch offen',
  correctedLink: 'berichtigt',
  withdrawnLink: 'zurückgenommen',
  payments: (count) =>
    count === 1
      ? '1 Kostenzeile nennt diese Bestellung'
      : `${count} Kostenzeilen nennen diese Bestellung`,
  overPaid: (amount) => `${amount} mehr, als bestellt war`,
  states: { open: 'offen', paid: 'bezahlt', closed: 'abgeschlossen' },
  about: (amount, rate) => `(etwa ${amount} zum Kurs ${rate})`,
  toBuy: {
    title: 'Noch zu kaufen',
    none: 'Kein Teil wird gesucht, das nicht bestellt oder vorhanden ist.',
    label: 'Noch zu kaufende Teile',
    wantedSince: 'Gesucht seit',
    mayCost: 'Voraussichtlich',
    restsOn: 'Beruht auf',
    noEstimate: 'keine Schätzung',
    estimate: 'eigener Schätzung',
    search: 'dem neuesten gesehenen Preis, {day}',
    searchBetween:
      'dem neuesten gesehenen Preis, {day}; unteres und oberes Ende sind der niedrigste und der höchste aller gesehenen',
    nothing: 'bisher nichts, daher nicht in den Summen',
  },
  overdue: 'Überfällig: {parts} {note}',
  overdueNote: (kind, days) =>
    `außer Haus (${kind}), fällig am {due}, vor ${days === 1 ? '1 Tag' : `${days} Tagen`} ({row})`,
};
