import type { Candidate, Choice } from '../model/kinds.ts';
import type { ReadProject } from '../read/content.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import type { RawRecord } from '../read/raw.ts';
import type { Rule } from './rule.ts';
import { standingRows } from './standing-rows.ts';

/** A choice names one candidate for each part it decides, each known by its day; a group's choice covers the group. What is chosen is the builder's affair. */
export const choicesFit: Rule = ({ project }) => [
  ...standingRows(project, 'candidates').flatMap(({ raw, value }) =>
    remaining(raw, value, project),
  ),
  ...standingRows(project, 'choices').flatMap(({ raw, value }) => {
    const picked = value.candidates.flatMap((id, index) => {
      const row = project.lists.candidates.find((candidate) => candidate.value.id === id)?.value;
      return row ? [{ row, index }] : [];
    });
    // A candidate that is not there has been said; what it would be of is not known.
    if (picked.length < value.candidates.length) return [];
    return [
      ...differentParts(raw, picked),
      ...knownByThen(raw, value, picked),
      ...coversGroup(raw, value, picked, project),
    ];
  }),
];

type Picked = readonly { readonly row: Candidate; readonly index: number }[];

function remaining(raw: RawRecord, { remaining: id }: Candidate, project: ReadProject): Problem[] {
  const spec = project.lists.specs.find(({ value }) => value.id === id)?.value;
  if (spec === undefined || spec.unit === '%') return [];
  const wrong = `remaining: spec "${id}" is in ${spec.unit}, not in %`;
  const fix = 'name a spec of the share that is left, or leave it out: the survey gives it';
  return [problemAt(raw.placeOf(['remaining']), 'candidate/remaining', wrong, fix)];
}

function differentParts(raw: RawRecord, picked: Picked): Problem[] {
  return picked.flatMap(({ row, index }) => {
    const first = picked.find((other) => other.row.part === row.part);
    if (first === undefined || first.index === index) return [];
    const wrong = `candidates: "${row.id}" and "${first.row.id}" are both for part "${row.part}"`;
    return [problemAt(raw.placeOf(['candidates', index]), 'choice/part-twice', wrong, 'keep one')];
  });
}

function knownByThen(raw: RawRecord, { date }: Choice, picked: Picked): Problem[] {
  return picked
    .filter(({ row }) => row.date > date)
    .map(({ row, index }) =>
      problemAt(
        raw.placeOf(['candidates', index]),
        'choice/later-candidate',
        `candidates: "${row.id}" was noted on ${row.date}, after the choice (${date})`,
        'correct the wrong one of the two dates',
      ),
    );
}

function coversGroup(
  raw: RawRecord,
  { group: id }: Choice,
  picked: Picked,
  project: ReadProject,
): Problem[] {
  const parts = picked.map(({ row }) => row.part);
  if (id === undefined) return new Set(parts).size > 1 ? [needsGroup(raw, parts)] : [];
  const group = project.lists.groups.find(({ value }) => value.id === id)?.value;
  if (group === undefined) return [];
  const missing = group.parts.filter((part) => !parts.includes(part));
  const stray = picked.filter(({ row }) => !group.parts.includes(row.part));
  return [
    ...(missing.length > 0 ? [lacks(raw, id, missing)] : []),
    ...stray.map(({ row, index }) =>
      problemAt(
        raw.placeOf(['candidates', index]),
        'choice/not-in-group',
        `candidates: "${row.id}" is for part "${row.part}", which is not in group "${id}"`,
        `add the part to the group in groups.yaml, or take "${row.id}" out`,
      ),
    ),
  ];
}

function lacks(raw: RawRecord, group: string, missing: readonly string[]): Problem {
  return problemAt(
    raw.placeOf(['candidates']),
    'choice/group-part',
    `candidates: none for ${missing.map((part) => `"${part}"`).join(', ')} of group "${group}"`,
    'name one candidate for each part of the group',
  );
}

function needsGroup(raw: RawRecord, parts: readonly string[]): Problem {
  return problemAt(
    raw.placeOf(['candidates']),
    'choice/no-group',
    `candidates: of ${parts.length} parts, and no group holds them together`,
    'name the group in "group", or write one choice for each part',
  );
}
