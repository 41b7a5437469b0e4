import type { Finding, Part, Reading } from '../model/kinds.ts';
import type { ReadProject } from '../read/content.ts';
import { suggest } from '../read/nearest.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import type { RawRecord } from '../read/raw.ts';
import type { Rule } from './rule.ts';
import { standingRows } from './standing-rows.ts';

/** A finding is about something that was there, its readings are of thickness, and its area and its place on a photo make sense. */
export const findingsFit: Rule = ({ project }) =>
  standingRows(project, 'findings').flatMap(({ raw, value }) => [
    ...inSurvey(raw, value, project),
    ...wasThere(raw, value, project),
    ...thickness(raw, value, project),
    ...area(raw, value),
    ...photo(raw, value, project),
    ...spot(raw, value),
  ]);

function at(raw: RawRecord, path: (string | number)[], code: string, wrong: string, fix?: string) {
  return [problemAt(raw.placeOf(path), `finding/${code}`, wrong, fix)];
}

function inSurvey(raw: RawRecord, { survey, date }: Finding, project: ReadProject): Problem[] {
  const begun = project.lists.surveys.find(({ value }) => value.id === survey)?.value.date;
  if (begun === undefined || date >= begun) return [];
  const fix = `write the survey's first day in surveys.yaml: date: ${date}`;
  return at(raw, ['date'], 'early', `date: "${date}" is before survey "${survey}" (${begun})`, fix);
}

/** What is made or bought new can't have been looked at before it was there; then another machine's version is meant. */
function wasThere(raw: RawRecord, finding: Finding, project: ReadProject): Problem[] {
  const part = project.lists.parts.find(({ value }) => value.id === finding.part)?.value;
  if (part?.got === undefined || finding.date >= part.got || finding.found === 'missing') return [];
  if (finding.source !== undefined && finding.source !== part.source) return [];
  return isMadeOrNew(part, project) ? notThere(raw, finding, part, project) : [];
}

function isMadeOrNew({ source }: Part, project: ReadProject): boolean {
  const kind = project.lists.sources.find(({ value }) => value.id === source)?.value.kind;
  return kind === 'made' || kind === 'new';
}

function notThere(raw: RawRecord, { source, part: id }: Finding, part: Part, project: ReadProject) {
  const base = project.lists.sources.find(({ value }) => value.kind === 'base')?.value.id;
  return at(
    raw,
    [source === undefined ? 'part' : 'source'],
    'not-there',
    `part "${id}" from source "${part.source}" was not there before ${part.got}`,
    base && `name the machine that was looked at, like source: ${base}`,
  );
}

function thickness(raw: RawRecord, finding: Finding, project: ReadProject): Problem[] {
  return (finding.readings ?? []).flatMap((id, index) => {
    const reading = project.lists.readings.find(({ value }) => value.id === id)?.value;
    return reading ? fitsThickness(raw, finding, { reading, index }, project) : [];
  });
}

function fitsThickness(
  raw: RawRecord,
  { date }: Finding,
  { reading, index }: { reading: Reading; index: number },
  project: ReadProject,
): Problem[] {
  const path = ['readings', index];
  const spec = project.lists.specs.find(({ value }) => value.id === reading.spec)?.value;
  const named = `readings: "${reading.id}" is of spec "${reading.spec}"`;
  if (spec !== undefined && spec.quantity !== 'length')
    return at(raw, path, 'no-thickness', `${named}, which is no length`, 'name readings of sheet');
  if (spec !== undefined && spec.nominal === undefined) {
    const fix = `add the sheet's thickness as new to "${spec.id}" in specs.yaml, like nominal: 1.2 mm`;
    return at(raw, path, 'no-nominal', `${named}, which has no nominal`, fix);
  }
  if (reading.date <= date) return [];
  const later = `readings: "${reading.id}" was taken on ${reading.date}, after the finding (${date})`;
  return at(raw, path, 'later-reading', later, 'write a finding of its own for it');
}

const WITH_AREA: readonly Finding['found'][] = ['filler', 'perforation', 'corrosion'];

function area(raw: RawRecord, { area: share, found }: Finding): Problem[] {
  if (share === undefined) return [];
  if (!WITH_AREA.includes(found))
    return at(
      raw,
      ['area'],
      'area',
      `area: "${share} %" stands with "${found}"`,
      `an area goes with ${WITH_AREA.join(', ')}; leave it out`,
    );
  return Number(share) <= 100
    ? []
    : at(raw, ['area'], 'area', `area: "${share} %" is more than the part`, 'write at most 100 %');
}

function photo(raw: RawRecord, { photo: file }: Finding, project: ReadProject): Problem[] {
  if (file === undefined || project.photos.includes(file)) return [];
  return [
    problemAt(
      raw.placeOf(['photo']),
      'photo/missing',
      `the photo "${file}" is not in ${project.id}/photos/`,
      suggest(file, project.photos) ?? 'put the file there',
    ),
  ];
}

function spot(raw: RawRecord, { at: place, photo: file }: Finding): Problem[] {
  if (place === undefined) return [];
  const fractions = place.map(Number);
  const shown = `at: "${place.join(' ')}"`;
  if (fractions.length !== 2 || fractions.some((fraction) => fraction > 1))
    return at(
      raw,
      ['at'],
      'at',
      `${shown} is no place on a photo`,
      'write two fractions from 0 to 1, across and down, like 0.25 0.60',
    );
  return file === undefined
    ? at(raw, ['at'], 'at', `${shown} names no photo`, 'add photo: and a file in photos/')
    : [];
}
