const kinds = {
  entry: 'Entry',
  spec: 'Spec',
  part: 'Part',
  photo: 'Photo',
  ledger: 'Ledger',
  project: 'Sheet',
  about: 'Site',
};

/** Search, the index at the back, an entry's place in its phase, and what is new to a reader. */
export const finding = {
  kinds,
  search: {
    title: 'Search',
    description: 'Search all pages: words, figures, parts, dates, ids of rows.',
    document: 'Search',
    label: 'Words, figures, a part, a date or the id of a row',
    button: 'Search',
    noScript:
      'Searching needs JavaScript, which is off here. The index of each project lists what there is: {indexes}.',
    indexes: 'What there is stands in the index of each project, too: {indexes}.',
    none: 'Nothing found for “{query}”.',
    one: 'One page found.',
    some: '{count} pages found.',
    first: '{count} pages found; the first {shown} are listed.',
    looking: 'Searching …',
    broken: 'The search could not be loaded. Try again when there is a connection.',
  },
  index: {
    title: 'Index',
    document: 'Index',
    description: (name: string) =>
      `Phases, systems, parts, specs and tags of ${name}, in order of the alphabet, with the entries that tell of them.`,
    lead: 'Phases, systems, parts, specs and tags, each with the entries that tell of it.',
    letters: 'Letters',
    noEntry: 'no entry yet',
    terms: { phase: 'phase', system: 'system', part: 'part', spec: 'spec', tag: 'tag' },
  },
  series: {
    label: 'This phase',
    place: (number: number, count: number) => `Entry ${number} of ${count} of {phase}`,
    all: 'All entries of the phase',
    before: 'Before in the phase',
    after: 'Next in the phase',
  },
  visit: {
    remember: 'Remember on this device what I have seen',
    explain: 'Nothing is sent anywhere.',
    newOnes: '{count} new since {day}',
    none: 'Nothing new since {day}',
    mark: 'new',
    seen: 'All seen',
    forget: 'Forget',
  },
};
