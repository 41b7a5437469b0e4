/** Photos, pairs of them, and what is pointed out on them. */
export const photos = {
  gallery: {
    title: 'Photos',
    description: (name: string) => `Photos of ${name}, by phase, by part and by place.`,
    lead: (count: number) =>
      `${count} ${count === 1 ? 'photo' : 'photos'}. The originals stay at home; what is published is smaller, and says neither where nor with what it was taken.`,
    byPhase: 'By phase',
    noPhase: 'No phase',
    byPart: 'By part',
    byPlace: 'By place',
  },
  page: {
    title: (title: string) => `Photo: ${title}`,
    description: (name: string) => `A photo of ${name}.`,
    document: 'Photo',
    valuesAsOf: (day: string) => `Values as of ${day}.`,
    others: 'Other photos',
    before: 'Before',
    after: 'After',
  },
  takenOn: 'Taken on {day}',
  facts: {
    parts: 'Parts',
    shownIn: 'Shown in',
    readings: 'Readings',
    findings: 'Findings',
    taken: 'Taken',
    place: 'Place',
    state: 'State',
  },
  evidence: {
    title: 'The original',
    stays: 'The original stays with its builder. Its SHA-256 is {hash}',
    staysTaken: (day: string) =>
      `The original, taken on ${day}, stays with its builder. Its SHA-256 is {hash}`,
    whoever:
      'Whoever is shown the original can work this number out again. If it comes out the same, it is the file that was published from, and not one bit of it has been changed since. The number does not tell what stood before the lens, or whether the camera’s clock was right.',
    rows: 'These rows carry the number in their {marked} text, so it can’t be exchanged without a trace:',
    marked: 'marked',
    row: (day: string) => `{row}, marked on ${day}`,
  },
  pair: {
    before: 'Before',
    after: 'After',
    later: (days: number) => (days === 1 ? 'One day later' : `${days} days later`),
    range: 'How far the earlier photo shows, from the left',
    sideBySide: 'Side by side',
    over: 'One over the other',
    shares: '{before} % before, {after} % after',
  },
  callouts: (count: number) =>
    `${count} ${count === 1 ? 'callout' : 'callouts'}, listed below the photo.`,
  found: (what: string) => `found: ${what}`,
};
