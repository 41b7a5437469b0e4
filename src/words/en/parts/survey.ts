/** The condition survey: findings, grades, and what has changed. */
export const survey = {
  title: 'Condition survey',
  description: (project: string) =>
    `What was found on the parts of ${project}, and the scale they are graded by.`,
  none: 'No part has been surveyed so far.',
  count: (findings: number, surveys: number) =>
    `${findings} findings in ${surveys} ${surveys === 1 ? 'survey' : 'surveys'}.`,
  structureCaution:
    'A grade says what was found, and not that a part is safe. What structure may lack, and how it is mended, is for a qualified person and the local rules to decide.',
  scale: 'The scale',
  scaleRule:
    'A part has the first grade, from the top, whose limits all hold. A limit of thickness holds when it is proven: all of the value ± U lies on the good side. Where U does not decide, both grades stand. Areas are judged by eye. Thickness left is the reading over the nominal of its spec, which is taken as exact.',
  ownScale: 'The limits are common practice and come from no standard.',
  taken: '{date}.',
  takenBy: '{date}, by {person}.',
  helper: 'helper',
  compared: 'Compared with what was found before',
  gone: 'Findings that no longer count',
  label: (survey: string) => `Survey: ${survey}`,
  whole: 'The whole survey, and the scale',
  columns: { grade: 'Grade', leastLeft: 'Least left', found: 'Found' },
  scaleColumns: {
    label: 'Grades',
    means: 'Means',
    limits: 'Limits',
    allows: 'May also have',
    noLimits: 'none',
    takesAll: 'whatever no other grade takes',
    takesNothing: 'nothing else',
  },
  found: {
    sound: 'sound',
    wear: 'wear',
    corrosion: 'surface rust',
    thin: 'thin',
    filler: 'filler',
    perforation: 'rusted through',
    crack: 'crack',
    bent: 'bent',
    leak: 'leak',
    seized: 'seized',
    missing: 'missing',
  },
  finding: {
    area: (share: string) => `${share} % of the area`,
    photo: 'photo',
    left: (nominal: string) => `{reading} of ${nominal}: {left} left`,
  },
  grades: {
    'as-made': {
      name: 'as made',
      definition: 'As it left its maker. It was looked at and nothing takes anything from it.',
    },
    'light-wear': {
      name: 'light wear',
      definition: 'Goes back as it is. Surface rust or wear that cleaning or adjusting deals with.',
    },
    worn: {
      name: 'worn',
      definition:
        'Goes back after small work: a dent dressed, a seal renewed, a thin spot watched.',
    },
    'to-mend': {
      name: 'to mend',
      definition:
        'Has to be mended before it goes back: new metal let in, cracks closed. Most stays.',
    },
    'to-rebuild': {
      name: 'to rebuild',
      definition: 'More work than a new one of the same; worth it where there is no other.',
    },
    pattern: {
      name: 'for a pattern',
      definition: 'Good for measuring and copying at most, or not there at all.',
    },
  },
  undecidedOfTwo: (better: string, worse: string) => `${better} or ${worse}, undecided`,
  undecidedOfMany: (best: string, worst: string) => `anything from ${best} to ${worst}, undecided`,
  gradeVerdicts: { meets: 'met', 'does not meet': 'not met', undecided: 'undecided' },
  limits: {
    remaining: (limit: string) => `at least ${limit} % of the thickness left`,
    filler: (limit: string) => `filler at most ${limit} %`,
    holes: (limit: string) => `rusted through at most ${limit} %`,
    noFiller: 'no filler',
    noHoles: 'nothing rusted through',
  },
  tests: {
    verdicts: { meets: 'meets', 'does not meet': 'does not meet', undecided: 'undecided' },
    forbids: (findings: string) => `does not allow: ${findings}`,
    allowsOthers: 'other findings: allowed',
    filler: (area: string, limit: string, verdict: string) =>
      `filler: ${area}, at most ${limit} %: ${verdict}`,
    holes: (area: string, limit: string, verdict: string) =>
      `rusted through: ${area}, at most ${limit} %: ${verdict}`,
    noArea: 'none',
    area: (share: string) => `${share} % of the area`,
    areaAndMore: (share: string) => `${share} % of the area and more`,
    areaNotStated: 'on a share not stated',
    thicknessNotAsked: 'thickness: not read, so the limit is not asked',
    thickness: (known: string, limit: string, verdict: string) =>
      `${known}, at least ${limit} %: ${verdict}`,
    left: (value: string) => `${value} left`,
    notRead: 'thickness not read',
    thinUnread: (known: string) => `${known}, and thin where nobody read it`,
    withoutU: (known: string) => `${known}, U not known`,
  },
  changes: {
    label: 'Compared with earlier surveys',
    was: 'Was',
    is: 'Is',
    says: 'Says',
    leastWas: 'Least left, was',
    difference: 'Difference, in percentage points',
    replacedBy: (before: string, after: string) => `${before}, then ${after}`,
    turns: { better: 'better', worse: 'worse', same: 'same', undecided: 'undecided' },
    anotherOne: (turn: string) => `${turn}; another one`,
    inSurvey: (survey: string) => survey.toLowerCase(),
    now: 'now',
    inItsPlace: 'in its place',
    withoutU: (size: string) => `(${size}), uncertainty not known`,
    changed: (size: string) => `(${size}), changed`,
    unchanged: (size: string) => `(${size}), no measurable change`,
    caption:
      "Least thickness left, in per cent of the nominal. Double-dot: before. Wide: this survey. The short bar below each is U at 95 %; the upright lines are the grades' limits.",
  },
  drawing: (bars: string) => `Thickness left, in per cent of the nominal: ${bars}.`,
};
