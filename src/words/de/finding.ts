import type { Words } from '../keys.ts';

export const finding: Words['finding'] = {
  kinds: {
    entry: 'Eintrag',
    spec: 'Kennwert',
    part: 'Teil',
    photo: 'Foto',
    ledger: 'Werkstattbuch',
    project: 'Blatt',
    about: 'Diese Seiten',
  },
  search: {
    title: 'Suche',
    description: 'Alle Seiten durchsuchen: Wörter, Zahlen, Teile, Tage, Zeilennummern.',
    document: 'Suche',
    label: 'Wörter, Zahlen, ein Teil, ein Tag oder eine Zeilennummer',
    button: 'Suchen',
    noScript:
      'Die Suche braucht JavaScript, das hier ausgeschaltet ist. Was es gibt, steht im Verzeichnis jedes Projekts: {indexes}.',
    indexes: 'Was es gibt, steht auch im Verzeichnis jedes Projekts: {indexes}.',
    none: 'Zu „{query}“ wurde nichts gefunden.',
    one: 'Eine Seite gefunden.',
    some: '{count} Seiten gefunden.',
    first: '{count} Seiten gefunden; die ersten {shown} sind aufgeführt.',
    looking: 'Es wird gesucht …',
    broken: 'Die Suche konnte nicht geladen werden. Mit einer Verbindung noch einmal versuchen.',
  },
  index: {
    title: 'Verzeichnis',
    document: 'Verzeichnis',
    description: (name) =>
      `Phasen, Baugruppen, Teile, Kennwerte und Schlagwörter von ${name} nach dem Alphabet, mit den Einträgen, die davon erzählen.`,
    lead: 'Phasen, Baugruppen, Teile, Kennwerte und Schlagwörter, jeweils mit den Einträgen, die davon erzählen.',
    letters: 'Buchstaben',
    noEntry: 'noch kein Eintrag',
    terms: {
      phase: 'Phase',
      system: 'Baugruppe',
      part: 'Teil',
      spec: 'Kennwert',
      tag: 'Schlagwort',
    },
  },
  series: {
    label: 'Diese Phase',
    place: (number, count) => `Eintrag ${number} von ${count} zu {phase}`,
    all: 'Alle Einträge der Phase',
    before: 'Davor in der Phase',
    after: 'Danach in der Phase',
  },
  visit: {
    remember: 'Auf diesem Gerät merken, was schon gelesen ist',
    explain: 'Es wird nichts gesendet.',
    newOnes: '{count} neu seit {day}',
    none: 'Nichts Neues seit {day}',
    mark: 'neu',
    seen: 'Alles gelesen',
    forget: 'Vergessen',
  },
};
