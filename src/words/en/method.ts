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
  hazards: 'Hazards',
  hazardsLead:
    'This is the record of how one builder worked, not instructions. Work with fuel, lifting, welding, blasting, spray, brakes, springs, asbestos, lead or mains and battery power can kill. Rules differ by place: local rules and licensed practice decide, and work on brakes, steering, seat anchorages and structure belongs in front of a qualified inspector before the machine is used. The signal words are those of ANSI Z535.6: DANGER will, WARNING could cause death or serious injury; CAUTION could cause minor or moderate injury.',
  signals: { DANGER: 'DANGER', WARNING: 'WARNING', CAUTION: 'CAUTION' },
  note: (signal: string, hazard: string) => `${signal}: ${hazard}`,
  published: (site: string, builder: string) => `${site} is published by ${builder}.`,
  publishedWithContact: (given: { site: string; builder: string; contact: string }) =>
    `${given.site} is published by ${given.builder}, ${given.contact}.`,
};
