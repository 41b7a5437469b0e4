import { counted } from '../../counted.ts';

/** Candidates for parts, side by side, and what was chosen. */
export const choices = {
  title: 'Choices',
  description: (project: string) =>
    `Which machine each part of ${project} comes from, what else there was, and why.`,
  none: 'No candidates have been noted so far.',
  count: (candidates: number, subjects: number) =>
    `${counted(candidates, 'candidate', 'candidates')}, compared for ${counted(subjects, 'part or group of parts', 'parts or groups of parts')}.`,
  intro:
    "Money is what is paid, and hours are the builder's own; at a stated rate they are shown beside it and never among it. The cheapest is not always what was chosen: the reason stands with the choice, and a change of mind stays. Figures are as of the day of the choice, unless a candidate was added later. How grades come about is told in the {survey}. Whether a repaired or made part may carry load is for a qualified person and the local rules to decide.",
  survey: 'condition survey',
  today: 'The comparison today',
  asOf: (day: string) => `As of ${day}.`,
  noCandidate: 'No candidate so far.',
  bySource: (group: string) => `${group}, by source`,
  drawingCaption:
    "Least thickness left, in per cent of the nominal, where it was read. The short bar is U at 95 %; the upright lines are the grades' limits.",
  nothingChosen: 'Nothing is chosen so far.',
  until: (day: string) => `until ${day}`,
  label: (part: string) => `Candidates: ${part}`,
  columns: {
    candidate: 'Candidate',
    money: 'Money',
    labour: 'Hours at the stated rate',
    together: 'Together',
    leastLeft: 'Least left',
    grade: 'Grade',
    toBeHad: 'To be had',
    risk: 'Risk',
  },
  chosen: 'chosen',
  notKnown: 'not known',
  notSurveyed: 'not surveyed',
  gone: (day: string) => `no longer counts since ${day}`,
  availability: {
    'in-hand': 'in hand',
    offered: 'offered',
    'to-order': 'to order',
    'to-make': 'to make',
    'not-found': 'not found',
  },
  risks: { low: 'low', medium: 'medium', high: 'high' },
  ways: {
    allFrom: 'All from',
    parts: 'Parts',
    together: 'Together, at the stated rate',
    asChosen: 'As chosen',
    some: (members: number, all: number) => `${members} of ${all}`,
    sumOf: (count: number, addends: string) => `sum of ${count}: ${addends}`,
    lacking: (parts: string) => `nothing for: ${parts}`,
  },
  cost: {
    withheld: 'the price is withheld',
    share: 'its share of what the donor cost',
    unknown: 'no price is known',
    price: {
      plain: 'price',
      unreadable: 'no price that can be read',
      withoutRate: (paid: string) => `price ${paid}; no rate on or before its day`,
      converted: (paid: string, rate: string) => `price ${paid} × ${rate}`,
    },
    value: {
      plain: 'stated value; its share of the donor is not worked out',
      unreadable: 'no stated value; its share of the donor is not worked out that can be read',
      withoutRate: (paid: string) =>
        `stated value; its share of the donor is not worked out ${paid}; no rate on or before its day`,
      converted: (paid: string, rate: string) =>
        `stated value; its share of the donor is not worked out ${paid} × ${rate}`,
    },
    labour: (hours: string, rate: string) => `${hours} h × ${rate} an hour`,
  },
  rows: {
    found: (part: string, found: string) => `Found: ${part}, ${found}`,
    foundAt: (part: string, found: string, place: string) => `Found: ${part}, ${found}, ${place}`,
    candidate: (part: string, name: string) => `Candidate: ${part}, ${name}`,
    chosen: (because: string) => `Chosen: ${because}`,
  },
};
