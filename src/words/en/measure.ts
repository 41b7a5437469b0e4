/** Specs, readings, uncertainty and what may be said of them. */
export const measure = {
  states: { 'as-found': 'as found', before: 'before', after: 'after', final: 'final' },
  verdicts: { meets: 'meets', 'does not meet': 'does not meet', undecided: 'undecided' },
  reached: { reached: 'reached', 'not reached': 'not reached', undecided: 'undecided' },
  change: {
    unknown: 'uncertainty not known',
    changed: 'changed',
    none: 'no measurable change',
  },
  limits: {
    between: (low: string, high: string) => `${low} to ${high}`,
    atLeast: (bound: string) => `at least ${bound}`,
    atMost: (bound: string) => `at most ${bound}`,
    nominal: (value: string) => `nominal ${value}`,
    per: (text: string, length: string) => `${text} per ${length}`,
    perReadOver: (text: string, length: string, over: string) =>
      `${text} per ${length}, read over ${over}`,
  },
  budget: {
    one: (unit: string) => `one value, in ${unit}`,
    mean: (count: number, value: string) => `mean of ${count} values: ${value}`,
    deviation: (size: string, freedom: number) =>
      `standard deviation s = ${size}, n − 1 = ${freedom}`,
    part: (name: string, how: string, size: string) => `u of ${name}: ${how} = ${size}`,
    parts: {
      repeats: 'repeats',
      step: 'step of the scale',
      certificate: 'certificate',
      'stated error': 'stated error',
    },
    shared: (name: string, zero: string) => `${name}, shared by zero "${zero}"`,
    noError: 'the instrument states no error, and one value shows no scatter: U is not known',
    nothingKnown: 'nothing is known of the uncertainty of what went in: U is not known',
    combined: (size: string, freedom: string) =>
      `combined u = ${size}, degrees of freedom ${freedom}`,
    expanded: (k: string, u: string, U: string) => `U = k·u = ${k} × ${u} = ${U} at 95 %`,
    drawn: (interval: string) => `A million draws (JCGM 101) give ${interval} at 95 %`,
    interval: (low: string, high: string) => `${low} to ${high}`,
    agrees: (drawn: string) => `${drawn}, which agrees with ± U.`,
    apart: (drawn: string) =>
      `${drawn}. That is more apart from ± U than its last digit allows, so the drawn interval is the one shown.`,
    exact: 'exact',
    notKnown: 'not known',
    moveTogether: 'the inputs share most of their scatter; u is what they do not share',
    correlation: 'what the inputs share (correlation)',
  },
  changes: {
    label: 'Before and after',
    before: 'Before',
    after: 'After',
    difference: 'Difference',
    says: 'Says',
    target: (reached: string) => `target ${reached}`,
    drawing: (given: { name: string; before: string; after: string; difference: string }) =>
      `${given.name}: before ${given.before}, after ${given.after}, difference ${given.difference}.`,
    lineBefore: (value: string) => `before ${value}`,
    lineAfter: (value: string) => `after ${value}`,
  },
  instruments: {
    label: 'Instruments',
    instrument: 'Instrument',
    takes: 'Takes',
    step: 'Step',
    statedError: 'Stated error',
    certificate: 'Certificate',
    calibrated: 'Calibrated',
    due: (day: string) => `, due ${day}`,
  },
  readings: {
    label: 'Readings',
    state: 'State',
    asRead: 'As read',
    takenWith: 'Taken with',
    conditions: 'Conditions',
    ranOut: (day: string) => `calibration ran out on ${day}`,
    photo: 'Photo of the reading',
    excluded: (because: string) => `struck values do not count: ${because}`,
  },
  links: {
    title: 'What depends on what',
    needs: 'This needs {specs}.',
    neededBy: 'It is needed by {specs}.',
  },
  moments: { title: 'Seen in a video', moment: '{moment} in {entry}' },
  table: {
    latest: 'Latest',
    readOn: 'Read on',
    limits: 'Limits',
    verdict: 'Verdict',
    sinceBefore: 'Since before',
  },
  values: {
    label: 'Values by day',
    workedOutOf: 'Worked out of',
    inputs: (count: number) => `${count} inputs`,
  },
  workedOut: {
    formula: 'Formula',
    secondLine: 'The second line has the numbers put in, in base units (m, kg, s, rad, N, Pa).',
    how: 'How this is done',
    source: 'Source',
    ownFormula: 'a formula of this project',
    assumes: 'Assumes',
    caution: 'Caution',
    signal: 'CAUTION',
    noInspection:
      'A calculation on a page is no inspection: before anyone relies on it, have it checked by a qualified person. Local rules and licensed practice decide.',
  },
  spec: {
    calculated: 'Calculated spec',
    measured: 'Measured spec',
    cardOf: (name: string, machine: string) => `${name} of the ${machine}`,
    latestOn: (day: string) => `Latest, ${day}`,
    verdictCounted: 'Verdict, uncertainty counted',
    target: 'Target',
    place: 'Place',
    history: 'History',
    openFilled: 'Open: as found and before. Filled: after and final.',
    wideBars: 'Wide bars: 95 %.',
    narrowBars: 'Narrow bars: 95 %.',
    dashed: 'Dashed: target.',
    inTable: 'The numbers are in the table below.',
    howWorkedOut: 'How it is worked out',
    notYet: 'Not yet: something that goes in has not been read.',
    noneYet: 'None yet.',
    toldIn: 'Told in',
    drawing: (given: {
      name: string;
      count: number;
      read: boolean;
      from: string;
      to: string;
      unit: string;
    }) =>
      `${given.name}: ${given.count} ${given.read ? 'readings' : 'worked-out values'} from ${given.from} to ${given.to}, in ${given.unit}.`,
  },
  index: {
    title: 'Specs',
    description: (name: string) => `Everything measured on ${name}, with uncertainty and limits.`,
    document: 'Measured specs',
    lead: (specs: number, readings: number) =>
      `${specs} specs, ${readings} readings. A value after ± is the expanded uncertainty at 95 %; {how}.`,
    how: 'how it is worked out',
    allReadings: 'All readings, in order',
  },
};
