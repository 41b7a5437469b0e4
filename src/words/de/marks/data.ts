import type { Words } from '../../keys.ts';

export const data: Words['marks']['data'] = {
  title: 'Daten',
  description: (project) =>
    `Das ganze Werkstattbuch von ${project} als CSV und JSON, zum Prüfen oder Nachrechnen.`,
  document: 'Daten des Werkstattbuchs',
  ledgerOf: (project) => `Werkstattbuch von ${project}`,
  lead: (tables) =>
    `Jede öffentliche Zeile des Werkstattbuchs bis zur neuesten, in ${tables} Tabellen. Privates bleibt beim Erbauer; was eine Zeile zurückhält, ist hier leer und in {withheld} aufgeführt; zurückgehaltene Beträge sind für jede Kostenart zu einer Zeile zusammengefasst.`,
  files: 'Dateien',
  file: 'Datei',
  rows: 'Zeilen',
  bytes: 'Bytes',
  holds: 'Inhalt',
  descriptor: 'Beschreibt die Tabellen: Spalten, Schlüssel, Einheiten, Größen, SHA-256.',
  book: 'Das ganze Buch in einer Datei: alle Tabellen, alle Summen mit ihren Zeilen, alle Werte der Kennwerte.',
  schema: 'JSON Schema des ganzen Buchs.',
  load: 'In eine Datenbank',
  loadHow: (currency) =>
    `Liegen die Dateien in einem Ordner, lädt {sqlite} sie, wie sie sind. Diese Zeilen ergeben das Geld jeder Phase, in kleinsten Einheiten von ${currency}, wie es auf dem {costs} steht:`,
  costSheet: 'Kostenblatt',
  commands: 'Befehle',
  columns: 'Spalten',
  columnCount: (count) => (count === 1 ? '1 Spalte' : `${count} Spalten`),
  key: (columns) => `Schlüssel: ${columns}. {file}`,
  columnsOf: (table) => `Spalten von ${table}`,
  column: 'Spalte',
  type: 'Typ',
  mayBeEmpty: (type) => `${type}, kann leer sein`,
};
