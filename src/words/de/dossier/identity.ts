import type { Words } from '../../keys.ts';

export const identity: Words['dossier']['identity'] = {
  machine: 'Maschine',
  builder: 'Erbauer',
  state: 'Zustand',
  finished: (day) => `fertiggestellt am ${day}`,
  underWay: (day) => `in Arbeit, Stand ${day}`,
  recorded: 'Aufgezeichnet',
  recordedIn: (first, last, entries) =>
    `${first} bis ${last}, ${entries === 1 ? '1 Eintrag' : `${entries} Einträge`} {ref}`,
  hoursWorked: 'Arbeitsstunden',
  hoursAndHow: (hours, how) => `${hours} h, ${how} {ref}`,
  moneySpent: 'Ausgaben abzüglich Gutschriften',
  moneyAndHow: (money, how) => `${money}, ${how} {ref}`,
  parts: 'Teile',
  partsKnown: (parts, fitted) => `${parts} bekannt, davon ${fitted} eingebaut {ref}`,
  specs: 'Kennwerte',
  specsRead: (specs, readings) =>
    `${specs}, aus ${readings === 1 ? '1 Messung' : `${readings} Messungen`} {ref}`,
  keeps: 'Das Ergebnis behält die Identität von {source}, {machine}. {because}',
  caution:
    'Die Vorschriften über das Zusammenfügen von Maschinen, über Zulassung und Prüfung sind von Ort zu Ort verschieden; maßgebend sind sie, nicht diese Seite. Vor Gebrauch, Verkauf oder Versicherung des Ergebnisses sind die Zulassungsbehörde und ein sachkundiger Prüfer zu fragen.',
  numbers: 'Nummern',
  number: 'Nummer',
  where: 'Wo sie steht',
  cameWith: 'Gehört zu',
  reads: 'Lautet',
  papers: 'Papiere',
  paper: 'Papier',
  paperFor: 'Für',
  held: 'Vorhanden',
  yes: 'ja',
  no: 'nein',
  masked:
    'Von einer Nummer stehen nur die letzten Zeichen hier, und nur, wo der Erbauer sie freigegeben hat. Für Berechtigte kann der Erbauer diese Seite mit vollständigen Nummern drucken.',
  notPublished: 'nicht veröffentlicht',
  notWrittenDown: 'nicht aufgeschrieben',
};
