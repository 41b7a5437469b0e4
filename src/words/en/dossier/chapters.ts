import { counted } from '../../counted.ts';

/** What stands above and between the tables of the sections. */
export const chapters = {
  choices:
    "Which version of a part was taken, of those that could be had, and the builder's reason. What each would have cost and how each was graded: {ref}",
  scale: 'The scale, and what each grade asks for: {ref}',
  surveyed: '{date}. {note}',
  surveyedBy: '{date}, by {person}. {note}',
  helper: 'helper',
  corrections:
    'A row that is wrong is not changed: a later row takes its place and says why. Both stay in the ledger {ref}',
  donor: '{note} Net cost {money}{hours}{shares} {ref}',
  donorMoney: (money: string, how: string) => `${money}, ${how}`,
  donorHours: (hours: string, how: string) => `; ${hours} h of work on it, ${how}`,
  donorShares: (parts: number) =>
    `; shared over ${counted(parts, 'part', 'parts')} by their stated values`,
  hazards:
    'What the builder warned of while the work was done. A list of hazards met is not a list of all there are: whoever works on the machine next has to look anew.',
  marks:
    "On each of these days every row of the ledger went into one number, its root. Change a row, move it or take it out, and the root is another. That shows whether rows were changed after the mark. It does not show that a row is true, or that none is missing; and the day of a mark is the builder's word unless somebody kept a copy.",
  key: 'The key: {key}',
  howToCheck: 'How to check it',
  checkThere:
    'Open {page} and press the button there; or download rows.jsonl, marks.txt, proofs.json and verify.py from that page into one folder and run {command}',
  compareRoot:
    'Compare the root it prints with the one above, letter by letter. This sheet of paper is such a kept copy.',
  checkSignature: 'A signature is checked with OpenSSL, by the commands on that page.',
  money: (tools: string, gifts: string, trades: string) =>
    `Money spent, credits taken off: {money}, {how} {ref} Shop tools are ${tools}, gifts ${gifts}, things got in trade ${trades}. The builder's own hours are not in it. What was paid is no valuation.`,
  rules: { in: 'in', out: 'out', share: (percent: string) => `in with ${percent} %` },
  pieces: 'Pieces are those fitted or in hand. By mass and by money: {ref}',
  partCosts:
    "A cost in parentheses is worked out: the part's own rows, and its share of the donor it came from {ref}",
  photo: '{caption} {day} {ref}',
  entry: (number: number) => `entry ${number}`,
  references:
    'Paper does not unfold, so every figure here names what stands behind it: the id of a ledger row, the number of an entry, or the end of an address. Put the end of an address behind {base}. A row is found by its id on the page of its kind, and the id also ends its address: {row}, then the id of a cost row. A reading stands on the page of its spec, which {specs} lists by name.',
  places: 'Places',
  reference: 'Reference',
  standsThere: 'What stands there',
  place: {
    log: 'the entries, by number and date',
    costs: 'cost rows and their running total',
    hours: 'hours rows, by phase',
    specs: 'specs; each has its readings, its uncertainty and its formula on a page of its own',
    parts: 'parts; each has its own page: parts/, its id, and a slash',
    survey: 'findings',
    choices: 'candidates and choices',
    corrections: 'rows that were replaced',
    data: 'every row as a file to download',
  },
  specs:
    'A value stands with its expanded uncertainty U at 95 %. Without parentheses it was measured; in parentheses it was worked out of other values. {meets}: all of value ± U lies within the limits. {doesNotMeet}: all of it lies outside. {undecided}: a limit lies inside ± U, so nothing is claimed. How U is found: {ref}',
  meets: 'Meets',
  doesNotMeet: 'Does not meet',
  undecided: 'Undecided',
};
