import type { Words } from '../../keys.ts';

export const choices: Words['parts']['choices'] = {
  title: 'Entscheidungen',
  description: (project) =>
    `Von welcher Maschine jedes Teil von ${project} stammt, was es sonst noch gab und warum es so kam.`,
  none: 'Bisher ist keine Möglichkeit vermerkt.',
  count: (candidates, subjects) =>
    `${candidates} ${candidates === 1 ? 'Möglichkeit' : 'Möglichkeiten'}, verglichen für ${subjects} ${subjects === 1 ? 'Teil oder Teilegruppe' : 'Teile oder Teilegruppen'}.`,
  intro:
    'Geld ist, was bezahlt wird; Stunden sind die eigenen, sie stehen zum angegebenen Satz daneben und nie darunter. Nicht immer fiel die Entscheidung für das Billigste: Die Begründung steht bei der Entscheidung, und wurde sie später geändert, bleibt auch die frühere stehen. Die Zahlen gelten für den Tag der Entscheidung, sofern nicht später eine Möglichkeit hinzukam. Wie die Zustandsnoten zustande kommen, steht in der {survey}. Ob ein instand gesetztes oder selbst gemachtes Teil tragen darf, entscheiden eine Fachkraft und die örtlichen Vorschriften.',
  survey: 'Bestandsaufnahme',
  today: 'Der Vergleich von heute',
  asOf: (day) => `Stand ${day}.`,
  noCandidate: 'Bisher keine Möglichkeit.',
  bySource: (group) => `${group}, nach Herkunft`,
  drawingCaption:
    'Geringste Restdicke in Prozent des Nennmaßes, wo sie gemessen wurde. Der kurze Balken ist U bei 95 %; die senkrechten Linien sind die Grenzen der Zustandsnoten.',
  nothingChosen: 'Bisher ist nichts entschieden.',
  until: (day) => `bis ${day}`,
  label: (part) => `Möglichkeiten: ${part}`,
  columns: {
    candidate: 'Möglichkeit',
    money: 'Geld',
    labour: 'Stunden zum angegebenen Satz',
    together: 'Zusammen',
    leastLeft: 'Geringste Restdicke',
    grade: 'Zustandsnote',
    toBeHad: 'Beschaffung',
    risk: 'Risiko',
  },
  chosen: 'ausgewählt',
  notKnown: 'nicht bekannt',
  notSurveyed: 'nicht aufgenommen',
  gone: (day) => `zählt seit ${day} nicht mehr`,
  availability: {
    'in-hand': 'vorhanden',
    offered: 'angeboten',
    'to-order': 'zu bestellen',
    'to-make': 'anzufertigen',
    'not-found': 'nicht gefunden',
  },
  risks: { low: 'gering', medium: 'mittel', high: 'hoch' },
  ways: {
    allFrom: 'Alles aus',
    parts: 'Teile',
    together: 'Zusammen, zum angegebenen Satz',
    asChosen: 'Wie entschieden',
    some: (members, all) => `${members} von ${all}`,
    sumOf: (count, addends) => `Summe aus ${count}: ${addends}`,
    lacking: (parts) => `nichts für: ${parts}`,
  },
  cost: {
    withheld: 'der Preis ist zurückgehalten',
    share: 'Anteil an den Kosten der Spendermaschine',
    unknown: 'kein Preis bekannt',
    price: {
      plain: 'Preis',
      unreadable: 'kein lesbarer Preis',
      withoutRate: (paid) => `Preis ${paid}; kein Kurs an oder vor diesem Tag`,
      converted: (paid, rate) => `Preis ${paid} × ${rate}`,
    },
    value: {
      plain: 'angegebener Wert; der Anteil an der Spendermaschine ist nicht berechnet',
      unreadable:
        'kein lesbarer angegebener Wert; der Anteil an der Spendermaschine ist nicht berechnet',
      withoutRate: (paid) =>
        `angegebener Wert ${paid}; kein Kurs an oder vor diesem Tag; der Anteil an der Spendermaschine ist nicht berechnet`,
      converted: (paid, rate) =>
        `angegebener Wert ${paid} × ${rate}; der Anteil an der Spendermaschine ist nicht berechnet`,
    },
    labour: (hours, rate) => `${hours} h × ${rate} je Stunde`,
  },
  rows: {
    found: (part, found) => `Befund: ${part}, ${found}`,
    foundAt: (part, found, place) => `Befund: ${part}, ${found}, ${place}`,
    candidate: (part, name) => `Möglichkeit: ${part}, ${name}`,
    chosen: (because) => `Entscheidung: ${because}`,
  },
};
