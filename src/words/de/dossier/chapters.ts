import type { Words } from '../../keys.ts';

export const chapters: Words['dossier']['chapters'] = {
  choices:
    'Welche Ausführung eines Teils unter den erreichbaren genommen wurde, und warum. Was jede gekostet hätte und welche Zustandsnote sie bekam: {ref}',
  scale: 'Die Notenskala und was jede Zustandsnote verlangt: {ref}',
  surveyed: '{date}. {note}',
  surveyedBy: '{date}, von {person}. {note}',
  helper: 'Helfer',
  corrections:
    'Eine falsche Zeile wird nicht geändert: Eine spätere Zeile tritt an ihre Stelle und nennt den Grund. Beide bleiben im Werkstattbuch {ref}',
  donor: '{note} Nettokosten {money}{hours}{shares} {ref}',
  donorMoney: (money, how) => `${money}, ${how}`,
  donorHours: (hours, how) => `; ${hours} h Arbeit daran, ${how}`,
  donorShares: (parts) =>
    `; nach den angesetzten Werten auf ${parts === 1 ? '1 Teil' : `${parts} Teile`} verteilt`,
  hazards:
    'Wovor der Erbauer während der Arbeiten gewarnt hat. Eine Liste der angetroffenen Gefahren ist keine Liste aller Gefahren: Wer als Nächster an der Maschine arbeitet, muss selbst neu hinsehen.',
  marks:
    'An jedem dieser Tage ging jede Zeile des Werkstattbuchs in eine einzige Zahl ein, die Wurzel. Wird eine Zeile geändert, verschoben oder entfernt, ist die Wurzel eine andere. Daran zeigt sich, ob Zeilen nach der Prüfmarke geändert wurden. Es zeigt nicht, dass eine Zeile wahr ist oder dass keine fehlt; und für den Tag einer Prüfmarke steht nur das Wort des Erbauers, sofern niemand eine Abschrift aufbewahrt hat.',
  key: 'Der Schlüssel: {key}',
  howToCheck: 'So wird geprüft',
  checkThere:
    '{page} öffnen und dort den Knopf drücken; oder rows.jsonl, marks.txt, proofs.json und verify.py von jener Seite in einen Ordner herunterladen und {command} ausführen',
  compareRoot:
    'Die ausgegebene Wurzel Zeichen für Zeichen mit der obigen vergleichen. Dieses Blatt Papier ist eine solche aufbewahrte Abschrift.',
  checkSignature:
    'Eine Signatur wird mit OpenSSL geprüft; die Befehle dafür stehen auf jener Seite.',
  money: (tools, gifts, trades) =>
    `Ausgaben abzüglich Gutschriften: {money}, {how} {ref} Werkstattausrüstung: ${tools}. Geschenke: ${gifts}. Eingetauschtes: ${trades}. Die eigenen Stunden des Erbauers sind nicht enthalten. Was bezahlt wurde, ist keine Wertermittlung.`,
  rules: {
    in: 'enthalten',
    out: 'nicht enthalten',
    share: (percent) => `mit ${percent} % enthalten`,
  },
  pieces: 'Gezählt sind eingebaute und vorhandene Stücke. Nach Masse und nach Geld: {ref}',
  partCosts:
    'Kosten in Klammern sind berechnet: die eigenen Zeilen des Teils und sein Anteil an der Spendermaschine, von der es stammt {ref}',
  photo: '{caption} {day} {ref}',
  entry: (number) => `Eintrag ${number}`,
  references:
    'Papier lässt sich nicht aufklappen; darum nennt jede Zahl hier, was hinter ihr steht: die Kennung einer Zeile des Werkstattbuchs, die Nummer eines Eintrags oder das Ende einer Adresse. Das Ende einer Adresse ist hinter {base} zu setzen. Eine Zeile steht unter ihrer Kennung auf der Seite ihrer Art, und die Kennung ist auch das Ende ihrer Adresse: {row}, dann die Kennung einer Kostenzeile. Eine Messung steht auf der Seite ihres Kennwerts; {specs} führt alle mit Namen auf.',
  places: 'Fundstellen',
  reference: 'Verweis',
  standsThere: 'Was dort steht',
  place: {
    log: 'die Einträge, nach Nummer und Datum',
    costs: 'Kostenzeilen mit laufender Summe',
    hours: 'Stundenzeilen, nach Phase',
    specs: 'Kennwerte; jeder hat Messungen, Messunsicherheit und Formel auf einer eigenen Seite',
    parts: 'Teile; jedes hat eine eigene Seite: parts/, seine Kennung und ein Schrägstrich',
    survey: 'Befunde',
    choices: 'Möglichkeiten und Entscheidungen',
    corrections: 'Zeilen, die ersetzt wurden',
    data: 'jede Zeile als Datei zum Herunterladen',
  },
  specs:
    'Jeder Wert steht mit seiner erweiterten Unsicherheit U bei 95 %. Ohne Klammern wurde er gemessen, in Klammern aus anderen Werten berechnet. {meets}: Wert ± U liegt ganz innerhalb der Grenzen. {doesNotMeet}: Er liegt ganz außerhalb. {undecided}: Eine Grenze liegt innerhalb von ± U, also wird nichts behauptet. Wie U ermittelt wird: {ref}',
  meets: 'Eingehalten',
  doesNotMeet: 'Nicht eingehalten',
  undecided: 'Unentschieden',
};
