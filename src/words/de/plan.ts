import type { Words } from '../keys.ts';
import { earned } from './plan/earned.ts';
import { forecast } from './plan/forecast.ts';

const days = (count: number) => (count === 1 ? '1 Tag' : `${count} Tage`);

export const plan: Words['plan'] = {
  states: { 'not started': 'nicht begonnen', 'under way': 'im Gang', finished: 'abgeschlossen' },
  helper: 'Helfer',
  allOfIt: 'Alles zusammen',
  hours: {
    title: 'Stunden',
    description: (name) =>
      `Alle Stundenzeilen von ${name}, mit Summen nach Phase und Art der Arbeit.`,
    document: 'Stundenbuch',
    lead: '{hours}, {how}.',
    download: 'Werkstattbuch herunterladen',
    whatIsPlanned:
      'Was geplant war und was noch kommt, steht im {plan}. Die üblichen Kennzahlen stehen unter {earned}.',
    thePlan: 'Plan',
    earnedValue: 'Fertigstellungswert',
    estimate: 'Schätzung und Aufwand',
    byPhase: 'Nach Phase',
    byWork: 'Nach Art der Arbeit',
    byPerson: 'Nach Person',
    whatPhases: 'Was jede Phase ist',
    allRows: 'Alle Zeilen',
    inOrder: 'Nach Datum, mit laufender Summe.',
    sum: (rows) => `Summe aus ${rows} ${rows === 1 ? 'Stundenzeile' : 'Stundenzeilen'}`,
    work: 'Arbeit',
    who: 'Wer',
    running: 'Laufend',
    notCounted: 'zählt nicht',
    weekFigure: 'Breit: Stunden einer Woche, Montag bis Sonntag.',
    everyWeek: 'Jede Woche in Zahlen',
    byWeek: 'Stunden nach Wochen',
    weekFrom: 'Woche ab',
    lastDays: (count) =>
      count === 1 ? 'Der letzte Arbeitstag' : `Die letzten ${count} Arbeitstage`,
    byDay: 'Stunden nach Tagen',
    weekDrawing: (weeks) => `Stunden in jeder von ${weeks} Wochen.`,
  },
  phases: {
    label: 'Phasen',
    planned: 'Geplant',
    worked: 'Gearbeitet',
    done: 'Fertig',
    float: 'Puffer, Tage',
    plannedHours: 'Geplant, h',
    actualHours: 'Tatsächlich, h',
    overHours: 'Mehr, h',
    ratio: 'Tatsächlich ÷ geplant',
    span: (from, to) => `${from} bis ${to}`,
    forecast: ({ state, low, high }) => `${state}, Prognose ${low} bis ${high}`,
    likely: ({ likely, least, most }) => `${likely} (${least} bis ${most})`,
  },
  timeline: {
    caption:
      'Gestrichelt: geplant. Breit: gearbeitet, mit einem Strich am Ende, wo die Phase als fertig gilt. Schmal mit drei Strichen: {forecast}, 10, 50 und 90 %. Zwischen Kreisen: gewartet. Punkte: Einträge. Stand {day}.',
    forecast: 'Prognose',
    inNumbers: 'Dasselbe in Zahlen',
    drawing: (rows, day) =>
      `${rows} Reihen, Stand ${day}: geplant gestrichelt, gearbeitet breit, Prognose als schmale Linie mit ihren Tagen für 10, 50 und 90 %.`,
    notePlanned: (planned) => `${planned} geplant`,
    noteWorked: (worked, planned) => `${worked} von ${planned}`,
    wantedParts: (count) => `${count} gesuchte Teile`,
    wanted: (what) => `Gesucht: ${what}`,
    waited: (what, count) => `${what}: ${days(count)}`,
    waiting: (what, count) => `${what}: bisher ${days(count)}`,
  },
  plan: {
    title: 'Plan',
    description: (name) =>
      `Phasen von ${name}, geplant, gearbeitet und als Prognose, und was sie aufhält.`,
    document: 'Plan',
    links: '{forecast}. {earned}, die üblichen Kennzahlen. {hours}.',
    howForecast: 'Wie die Prognose entsteht und wie sie sich verschoben hat',
    everyHours: 'Alle Stundenzeilen',
    phases: 'Phasen',
    whatFloat:
      'Puffer: Tage, um die eine Phase nach ihrem geplanten Tag enden darf, bevor sich der letzte Tag des Plans verschiebt, wenn keine Phase vor ihrem geplanten Tag beginnt.',
    critical: 'Wo nichts rutschen darf',
    byPlan: (chain, begins) =>
      `Nach dem Plan: ${chain}. Die erste davon beginnt ${begins}, und ein Tag, der in einer von ihnen verloren geht, fehlt am Ende.`,
    byLeft: (chain, begins) =>
      `Nach dem, was bleibt: ${chain}, Beginn ${begins}. Berechnet aus den restlichen Stunden im Tempo der letzten Wochen, als hätte jede Phase alle Zeit.`,
    chained: ', dann ',
    atOnce: 'sofort',
    onPlannedDay: 'an ihrem geplanten Tag',
    afterWait: (what) => `nach „${what}“`,
    noFloat: (name) => `${name}: kein Puffer`,
    floatOf: (name, count) => `${name}: ${days(count)} Puffer`,
    blocks: 'Was wen aufhält',
    waits: 'Alle Wartezeiten',
    calendar: 'Kalender',
    weeks: 'Stunden je Woche',
  },
  holds: {
    none: 'Soweit bekannt, hält nichts eine offene Phase auf.',
    rule: 'Eine Wartezeit ohne bekanntes Ende bleibt aus der Prognose heraus, da niemand sagen könnte, was zu ziehen wäre. Eine überfällige zählt, als ginge sie morgen zu Ende.',
    label: 'Was Phasen aufhält',
    by: 'Aufgehalten durch',
    since: 'Seit',
    days: 'Tage',
    expected: 'Erwartet',
    kinds: {
      wait: 'Wartezeit',
      part: 'gesuchtes Teil',
      preparation: 'außer Haus',
      phase: 'Phase',
    },
    nobodyKnows: 'unbekannt',
    seeForecast: 'siehe Prognose',
    overdue: ', überfällig',
  },
  waits: {
    label: 'Wartezeiten',
    from: 'Von',
    until: 'Bis',
    days: 'Tage',
    for: 'Worauf',
    open: 'offen',
    corrected: 'berichtigt, siehe {corrections}',
    corrections: 'Berichtigungen',
  },
  week: {
    asProject: 'Wie in der Projektdatei.',
    average: (weeks, day) =>
      `In der Projektdatei steht keine Woche; dies ist der Durchschnitt der ${weeks} Wochen bis ${day}.`,
    shape: (hours) =>
      `Eine Woche hat ${hours} h. Für die Prognose zählt nur ihre Verteilung: Wie viel in einer Woche gearbeitet wird, sagt das Tempo.`,
    label: 'Stunden einer Woche',
    away: 'Nicht da:',
    range: (from, to) => `${from} bis ${to}`,
  },
  task: { done: 'erledigt', toDo: 'zu erledigen' },
  forecast,
  earned,
};
