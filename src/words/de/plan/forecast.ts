import type { Words } from '../../keys.ts';

export const forecast: Words['plan']['forecast'] = {
  title: 'Prognose',
  description: (name) =>
    `Wann ${name} fertig wird, als Bereich, wie er entsteht und wie er sich verschoben hat.`,
  document: 'Prognose',
  label: (day) => `Prognose, Stand ${day}`,
  notYet: (reason) => `Noch nicht: ${reason}.`,
  loop: (ids) => `Noch nicht: Phasen warten aufeinander (${ids}).`,
  nothingPlanned: 'Es ist nichts geplant.',
  finishedOn: (day) => `Fertig am ${day}.`,
  doneOn: (day) => `Fertig am ${day}, nach neun von zehn Ziehungen.`,
  doneBetween: (low, high, middle) =>
    `Fertig zwischen ${low} und ${high}, nach acht von zehn Ziehungen; bis ${middle} in der Hälfte davon.`,
  reasons: {
    tooFar: (weeks, years) =>
      `im Tempo der letzten ${weeks} Wochen könnte es mehr als ${years} Jahre dauern`,
    fewFinished: (finished, least) =>
      `${finished} von mindestens ${least} Phasen sind mit Stunden abgeschlossen, und Schätzungen werden danach berichtigt, wie jene ausgingen`,
    fewWeeks: (weeks, least) =>
      `es gibt ${weeks} von mindestens ${least} Wochen mit Stunden, aus denen das Tempo folgt`,
    noPace: (weeks) =>
      `in den letzten ${weeks} Wochen wurde nichts gearbeitet, also gibt es kein Tempo`,
    noTime: 'der Arbeitskalender hat in keiner Woche Zeit',
  },
  hangsOn: (drivers) => `Am meisten hängt es ab von: ${drivers}.`,
  pace: 'dem Tempo der kommenden Wochen',
  caption:
    'Balken: Ziehungen, die an diesen Tagen enden, die äußersten Hundertstel in den äußeren Balken. Linie darunter: 10, 50 und 90 % davon. Prognose vom Stand {day}; {how}.',
  how: 'wie sie entsteht',
  from: 'Aus den Zeilen bis {day}: restliche Stunden nach den eigenen bisherigen Verhältnissen, im eigenen Tempo, durch den {calendar}, die Folge der {phases} und die {waits}, viele Male gezogen mit demselben Startwert. Es zählt nur, was an dem Tag bekannt war.',
  calendar: 'Kalender',
  phases: 'Phasen',
  waits: 'Wartezeiten',
  notInIt: (what) => `Nicht darin, da niemand ihr Ende kennt: ${what}.`,
  drawing: (low, middle, high) =>
    `Prognose der Fertigstellung: 10 % der Ziehungen bis ${low}, 50 % bis ${middle}, 90 % bis ${high}.`,
  moves: {
    title: 'Wie sie sich verschoben hat',
    caption:
      'Quer: der Tag eines Eintrags. Hoch: die Fertigstellung nach der Prognose dieses Tages, 10 bis 90 %, der Punkt bei 50 %. Gestrichelt: der letzte Tag des Plans.',
    finished: 'Breit: der Tag der Fertigstellung.',
    inNumbers: 'Jeder Eintrag in Zahlen',
    label: 'Prognosen nach Einträgen',
    drawing: (entries, from, to) =>
      `Prognose der Fertigstellung an den Tagen von ${entries} Einträgen, vom ${from} bis ${to}; jeweils von dem Tag, den 10 % der Ziehungen nicht überschreiten, bis zu dem von 90 %.`,
  },
  record: {
    title: 'Wie gut sie war',
    label: 'Prognosen abgeschlossener Phasen',
    finished: 'Fertig',
    held: 'Getroffen',
    passed: 'Überschritten',
    beaten: 'Unterboten',
    counts: ({ all, held, share, late, early }) =>
      `Einträge haben ${all}-mal eine Fertigstellung vorhergesagt, die inzwischen bekannt ist, als Bereich, der sie in acht von zehn Fällen enthalten soll. Getroffen: ${held}, ${share} %; überschritten: ${late}; unterboten: ${early}.`,
    passedMost: (times, phase, ratio) =>
      `Am häufigsten überschritten (${times}): ${phase}, mit dem ${ratio}-Fachen der geplanten Stunden.`,
    beatenMost: ({ times, phase, gone, came }) =>
      `Am häufigsten unterboten (${times}): ${phase}, vorhergesagt mit einem Tempo von ${gone} h je Woche, wo ${came} h kamen.`,
  },
  left: {
    title: 'Restliche Stunden',
    rule: (typical) =>
      `Geplant × ${typical} − gearbeitet, mindestens ein Zehntel des Plans. Jede Ziehung nimmt eigene Verhältnisse um {ratios}; die Summe der Ziehungen liegt in acht von zehn Fällen zwischen {low} und {high} h.`,
    pastOnes: 'die bisherigen',
    planned: 'Geplant, h',
    worked: 'Gearbeitet, h',
    left: 'Rest, h',
  },
  ratios: {
    title: 'Was abgeschlossene Phasen sagen',
    mean: ({ typical, low, high }) =>
      `Tatsächliche durch geplante Stunden, im geometrischen Mittel ${typical}. In acht von zehn Fällen kommt die nächste Phase bei ${low} bis ${high} heraus: Je weniger abgeschlossen sind, desto weniger sagen sie.`,
    spread: ({ typical, spread, first, count, freedom }) =>
      `Die Logarithmen der Verhältnisse haben den Mittelwert ln ${typical} und die Standardabweichung ${spread}, worin eine weitere Phase mit ${first} mitzählt: −20 bis +30 %, der Bereich einer Budgetschätzung (AACE 18R-97, Klasse 3). Der Bereich darüber ist Mittelwert ± t·${spread}·√(1 + 1/${count}), mit Students t für ${freedom} Freiheitsgrade.`,
  },
  paces: {
    title: 'Tempo',
    mean: ({ hours, weeks, day }) =>
      `${hours} h je Woche, der Durchschnitt von ${weeks} Wochen zu sieben Tagen bis ${day}. Wochen, die größtenteils abwesend verbracht wurden, bleiben weg; die Stunden einer teilweise abwesenden Woche werden auf eine ganze hochgerechnet.`,
    label: 'Tempo nach Wochen',
    weekTo: 'Woche bis',
    worked: 'Gearbeitet, h',
    whole: 'Ganze Woche, h',
  },
  drivers: {
    title: 'Wovon die Fertigstellung abhängt',
    rule: 'Entscheidet: Anteil der Ziehungen, in denen ein wenig mehr davon die Fertigstellung verschoben hätte. Mit nur zwei Händen tun das die meisten Phasen immer; mehr sagt deshalb die Rangkorrelation (nach Spearman) daneben: wie eng die Fertigstellung folgt, höchstens 1 oder −1.',
    decides: 'Entscheidet',
    correlation: 'Korrelation',
    always: 'immer',
  },
};
