const tries = (count: number) => (count === 1 ? '1 try' : `${count} tries`);

/** What is looked for, what is for sale, and how the looking went. */
export const hunts = {
  title: 'Wanted and for sale',
  description: (project: string) =>
    `Parts that ${project} still needs, and parts left over from it.`,
  document: 'Wanted list',
  feedTitle: (project: string) => `${project}: wanted`,
  forMachine: (machine: { year: number; maker: string; model: string; kind: string }) =>
    `For a ${machine.year} ${machine.maker} ${machine.model}, ${machine.kind}.`,
  feedLink: 'This list as a feed',
  wanted: 'Wanted',
  nothingWanted: 'Nothing is wanted.',
  forSale: 'For sale',
  nothingForSale: 'Nothing is for sale.',
  went: 'How the looking went',
  summary: (parts: number, found: number, count: number) =>
    `${parts} ${parts === 1 ? 'part' : 'parts'} looked for, ${found} found, ${tries(count)}.`,
  notHeld: (count: number, all: number) =>
    `${count} of ${all} tries met a list with the part in it, and no part.`,
  everySearch: 'Every search',
  searches: 'Searches',
  result: 'Result',
  results: {
    none: 'nothing',
    'listed-not-held': 'listed, but not held',
    promised: 'promised',
    bought: 'bought',
  },
  counted: (count: number, result: string) => `${count} ${result}`,
  tries,
  columns: {
    since: 'Since',
    days: 'Days',
    tries: 'Tries',
    results: 'What came of them',
    price: 'Newest price',
    ended: 'Ended',
  },
  stillLookedFor: 'still looked for',
  neededFor: 'needed for {phase}',
  asked: {
    lookedFor: (system: string, days: number) =>
      `${system}; looked for since {since}, ${days} days, {tries}`,
    noTry: 'no try yet',
    mayCost: (amount: string) => `may cost ${amount}`,
    asking: (amount: string) => `asking ${amount}`,
    makeAnOffer: 'make an offer',
    off: 'off {source}; for sale since {since}',
  },
  short: {
    label: 'Wanted',
    wanted: 'Wanted: {part}',
    since: (days: number, count: number) => `since {since}, ${days} days, ${tries(count)}`,
    forSale: 'For sale: {part}',
    offeredSince: 'since {since}',
    nothing: 'Nothing wanted and nothing for sale.',
    asOf: (day: string) => `As of ${day}; {today}.`,
    today: 'what is wanted today',
  },
  feed: {
    title: (project: string) => `${project}: wanted and for sale`,
    lookedFor: (since: string, count: number) =>
      `Looked for since ${since}, ${tries(count)} so far.`,
    mayCost: (amount: string) => `It may cost ${amount}.`,
    asking: (amount: string) => `Asking ${amount}.`,
    makeAnOffer: 'Make an offer.',
    fits: (year: number, model: string, system: string) => `For a ${year} ${model}, ${system}.`,
    from: (source: string, model: string, system: string) => `${source}, ${model}, ${system}.`,
    answer: (contact: string) => `To answer: ${contact}`,
    wanted: (part: string) => `Wanted: ${part}`,
    forSale: (part: string) => `For sale: ${part}`,
  },
};
