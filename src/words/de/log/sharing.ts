import type { Words } from '../../keys.ts';

export const sharing: Words['log']['sharing'] = {
  title: 'Weitergeben',
  address: 'Adresse',
  citeAs: 'Zitieren als',
  data: 'Daten',
  qr: (address) => `QR-Code von ${address}`,
  citation: {
    measured: ({ value, uncertainty, day }) => `${value} (${uncertainty}), gemessen am ${day}`,
    calculated: ({ value, uncertainty, day }) =>
      `${value} (${uncertainty}), berechnet für den ${day}`,
    known: 'U bei 95 %',
    unknown: 'Messunsicherheit nicht bekannt',
    asOf: (part, day) => `${part}, Stand ${day}`,
  },
  card: {
    owner: 'Eigentümer',
    document: 'Dokumentenart',
    date: 'Datum',
    phase: 'Phase',
    state: 'Stand',
    uncertainty: 'Messunsicherheit',
    finished: 'fertiggestellt',
    underWay: 'in Arbeit',
    spec: 'Gemessener Kennwert',
    known: 'U bei 95 %',
    unknown: 'nicht bekannt',
    entry: (number, count) => `Eintrag ${number} von ${count}`,
    soFar: ({ hours, money, entries }) =>
      `${hours} Stunden gearbeitet, ${money} ausgegeben, ${entries === 1 ? '1 Eintrag' : `${entries} Einträge`}`,
    beforeAndAfter: ({ before, after, changed }) =>
      `vorher ${before}, nachher ${after}: ${changed}`,
    verdicts: {
      meets: 'Grenzen eingehalten, mit Messunsicherheit',
      'does not meet': 'Grenzen nicht eingehalten, mit Messunsicherheit',
      undecided: 'hinsichtlich der Grenzen unentschieden, mit Messunsicherheit',
    },
  },
  feed: {
    marks: 'Prüfmarken',
    marked: (day) => `Prüfmarke des Werkstattbuchs vom ${day}`,
    drawing: 'Zeichnung auf der Seite',
    drawingOf: (label) => `Zeichnung auf der Seite: ${label}`,
    mark: (rows, root) => `${rows}, Wurzel ${root}`,
  },
  structured: {
    ledger: (project) => `Werkstattbuch von ${project}`,
    measured: (day, state) => `Gemessen ${day}, ${state}`,
    calculated: (day, state) => `Berechnet ${day}, ${state}`,
    states: { 'as-found': 'Fundzustand', before: 'vorher', after: 'nachher', final: 'endgültig' },
    uncertainty: 'Erweiterte Unsicherheit U, Überdeckung 95 %',
  },
};
