import { calculated, measured, totals } from './method/rules.ts';

/** How figures are worked out, and the hazards of the work. */
export const method = {
  totals,
  measured,
  calculated,
  title: 'Method and hazards',
  description:
    'How the figures on this site are worked out, what the lines mean, and the hazards of the work.',
  document: 'Method',
  lead: 'Every number here can be opened: an underlined sum with the scribed mark leads to the rows that made it, a measured value to its readings.',
  /** Words that stand out in the rules. */
  changed: 'changed',
  undecided: 'undecided',
  reached: 'reached',
  lines: 'What the lines mean',
  lineKey: {
    wide: { name: 'wide', meaning: 'measured, worked, spent' },
    narrow: { name: 'narrow', meaning: 'reference: scales, dimension lines, limits' },
    planned: { name: 'dashed', meaning: 'planned or estimated' },
    before: { name: 'long-dash double-dot', meaning: 'as it was before' },
    centre: { name: 'long-dash dot', meaning: 'the day that is looked at' },
    limit: { name: 'narrow with hatching side', meaning: 'a limit' },
    cut: { name: 'zigzag', meaning: 'a scale that is cut and does not start at zero' },
  },
  hazards: 'Hazards',
  hazardsLead:
    'This is the record of how one builder worked, not instructions. Work with fuel, lifting, welding, blasting, spray, brakes, springs, asbestos, lead or mains and battery power can kill. Rules differ by place: local rules and licensed practice decide, and work on brakes, steering, seat anchorages and structure belongs in front of a qualified inspector before the machine is used. The signal words are those of ANSI Z535.6: DANGER will, WARNING could cause death or serious injury; CAUTION could cause minor or moderate injury.',
  signals: { DANGER: 'DANGER', WARNING: 'WARNING', CAUTION: 'CAUTION' },
  note: (signal: string, hazard: string) => `${signal}: ${hazard}`,
  published: (site: string, builder: string) => `${site} is published by ${builder}.`,
  publishedWithContact: (given: { site: string; builder: string; contact: string }) =>
    `${given.site} is published by ${given.builder}, ${given.contact}.`,
};
