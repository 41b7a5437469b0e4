import type { Words } from '../../keys.ts';

const days = (count: number) => (count === 1 ? '1 Tag' : `${count} Tage`);
const tries = (count: number) => (count === 1 ? '1 Versuch' : `${count} Versuche`);

export const hunts: Words['parts']['hunts'] = {
  title: 'Gesucht und zu verkaufen',
  description: (project) =>
    `Teile, die ${project} noch braucht, und Teile, die davon übrig geblieben sind.`,
  document: 'Suchliste',
  feedTitle: (project) => `${project}: Gesucht`,
  forMachine: ({ year, maker, model, kind }) => `Für: ${maker} ${model}, Baujahr ${year}, ${kind}.`,
  feedLink: 'Diese Liste als Feed',
  wanted: 'Gesucht',
  nothingWanted: 'Nichts gesucht.',
  forSale: 'Zu verkaufen',
  nothingForSale: 'Nichts zu verkaufen.',
  went: 'Wie die Suche verlief',
  summary: (parts, found, count) =>
    `${parts} ${parts === 1 ? 'Teil' : 'Teile'} gesucht, ${found} gefunden, ${tries(count)}.`,
  notHeld: (count, all) =>
    `Bei ${count} von ${all === 1 ? '1 Versuch' : `${all} Versuchen`} stand das Teil in der Liste, aber nicht im Regal.`,
  everySearch: 'Alle Suchen',
  searches: 'Suchen',
  result: 'Ergebnis',
  results: {
    none: 'nichts',
    'listed-not-held': 'gelistet, aber nicht vorrätig',
    promised: 'zugesagt',
    bought: 'gekauft',
  },
  counted: (count, result) => `${count}-mal ${result}`,
  tries,
  columns: {
    since: 'Seit',
    days: 'Tage',
    tries: 'Versuche',
    results: 'Was dabei herauskam',
    price: 'Neuester Preis',
    ended: 'Beendet',
  },
  stillLookedFor: 'noch gesucht',
  neededFor: 'gebraucht für {phase}',
  asked: {
    lookedFor: (system, count) => `${system}; gesucht seit {since}, ${days(count)}, {tries}`,
    noTry: 'noch kein Versuch',
    mayCost: (amount) => `geschätzter Preis ${amount}`,
    asking: (amount) => `Preisvorstellung ${amount}`,
    makeAnOffer: 'Angebot erbeten',
    off: 'von {source}; zu verkaufen seit {since}',
  },
  short: {
    label: 'Gesucht',
    wanted: 'Gesucht: {part}',
    since: (count, tried) => `seit {since}, ${days(count)}, ${tries(tried)}`,
    forSale: 'Zu verkaufen: {part}',
    offeredSince: 'seit {since}',
    nothing: 'Nichts gesucht und nichts zu verkaufen.',
    asOf: (day) => `Stand ${day}; {today}.`,
    today: 'was heute gesucht wird',
  },
  feed: {
    title: (project) => `${project}: gesucht und zu verkaufen`,
    lookedFor: (since, count) => `Gesucht seit ${since}, bisher ${tries(count)}.`,
    mayCost: (amount) => `Geschätzter Preis: ${amount}.`,
    asking: (amount) => `Preisvorstellung ${amount}.`,
    makeAnOffer: 'Angebot erbeten.',
    fits: (year, model, system) => `Für: ${model}, Baujahr ${year}, ${system}.`,
    from: (source, model, system) => `${source}, ${model}, ${system}.`,
    answer: (contact) => `Antwort an: ${contact}`,
    wanted: (part) => `Gesucht: ${part}`,
    forSale: (part) => `Zu verkaufen: ${part}`,
  },
};
