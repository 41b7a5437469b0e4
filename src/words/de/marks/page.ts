import type { Words } from '../../keys.ts';

export const page: Words['marks']['page'] = {
  title: 'Prüfmarken',
  description: (project) =>
    `Woran zu erkennen ist, dass veröffentlichte Zeilen von ${project} nachträglich nicht geändert wurden, und wie das geprüft wird.`,
  lead: (rows) =>
    `An den unten genannten Tagen bekam das Werkstattbuch eine Prüfmarke: Jede seiner Zeilen ging in eine einzige Zahl ein, die Wurzel. Unter der neuesten: ${rows}. Wird eine Zeile geändert, verschoben oder entfernt, ist die Wurzel eine andere.`,
  theMarks: 'Die Prüfmarken',
  keepACopy:
    'Sie stehen in {marks}. Eine Abschrift davon ist aufzubewahren: Mit ihr kann später niemand eine andere Vergangenheit vorzeigen. Ein Teil, eine Bestellung oder eine Vorbereitung, die seither gewachsen ist (eingebaut, abgeschlossen, zurück), steht in einer späteren Prüfmarke erneut, unter eigener Kennung; die frühere Zeile bleibt.',
  shows: 'Was das zeigt und was nicht',
  tamperEvident: 'verrät nachträgliche Änderungen',
  evident:
    'Das Werkstattbuch {tamperEvident}: Wurde eine Zeile unter einer Prüfmarke danach geändert, verschoben oder entfernt, kann das jeder erkennen.',
  notTrue:
    'Es kann nicht zeigen, dass eine Zeile wahr ist oder dass keine fehlt: Was nie aufgeschrieben wurde, ist nicht enthalten.',
  date: 'Für das Datum einer Prüfmarke steht nur das Wort des Erbauers, sofern niemand eine Abschrift von jenem Tag aufbewahrt hat. Zeilen mit einem Datum vor der ersten Prüfmarke können an deren Tag geschrieben worden sein.',
  private:
    'Was privat bleibt, ist als Hashwert mit geheimem Salt enthalten: Der Erbauer kann später zeigen, was aufgezeichnet wurde, und niemand kann es aus dem Hashwert erraten. Ein Beleg oder Foto ist mit seinem SHA-256 enthalten, damit die Datei von jeder anderen zu unterscheiden ist.',
  inBrowser: 'In diesem Browser prüfen',
  loads:
    'Geladen werden {rows}, {marks} und {proofs} von dieser Website; jeder Hashwert wird neu berechnet, und nichts wird irgendwohin gesendet. Das {script} ist kurz genug, um es zu lesen.',
  script: 'Skript',
  needsScript: 'Dazu ist JavaScript nötig. Der Weg weiter unten kommt ohne aus.',
  onYourMachine: 'Auf dem eigenen Rechner prüfen',
  python: 'Mit Python 3 und sonst nichts. {verifier} ist kurz und sollte zuerst gelesen werden.',
  commands: 'Befehle zum Herunterladen und Prüfen',
  kept: 'Mit einer bei einem früheren Besuch aufbewahrten marks.txt wird auch geprüft, ob die heutigen Prüfmarken nur etwas hinzufügen:',
  keptCommand: 'Befehl zur Prüfung gegen eine aufbewahrte Datei',
  key: 'Der Schlüssel und seine Signaturen',
  signature:
    'Eine Signatur zeigt, dass der Inhaber des Schlüssels die Prüfmarke gesetzt hat, samt Datum. Der öffentliche Schlüssel ist {file}, oder als Zeile:',
  publicKey: 'Öffentlicher Schlüssel',
  openssl:
    'Mit OpenSSL 3, neben key.pem. Die vier Zeilen und die Signatur sind die der neuesten signierten Prüfmarke in marks.txt; die ersten vier Bytes benennen dort nur den Schlüssel.',
  signatureCommands: 'Befehle zur Prüfung der Signatur',
  check: {
    everyRow: 'Jede Zeile prüfen',
    older: 'Eine früher aufbewahrte marks.txt, falls vorhanden',
    checking: 'Wird geprüft …',
    showProof: 'Nachweis zeigen',
    id: 'Kennung einer Zeile, etwa c-001',
    searching: 'Wird gesucht …',
  },
};
