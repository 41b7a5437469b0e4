import type { Project } from '../book/types.ts';
import { findRow } from '../ledger/find-row.ts';
import type { Day } from '../time/day.ts';
import type { Words } from '../words/words.ts';

/** What a row about finding and choosing is, in a few words; undefined for an id that none of them has. */
export function describeDecision(
  project: Project,
  id: string,
  { parts: { choices, survey } }: Words,
): { readonly date: Day; readonly what: string } | undefined {
  const nameOf = (part: string) => findRow(project.parts, part)?.name ?? part;
  const finding = findRow(project.findings, id);
  if (finding) {
    const { date, part, found, place } = finding;
    const [name, what] = [nameOf(part), survey.found[found]];
    const { rows } = choices;
    return { date, what: place ? rows.foundAt(name, what, place) : rows.found(name, what) };
  }
  const candidate = findRow(project.candidates, id);
  if (candidate) {
    const source = findRow(project.sources, candidate.source)?.name;
    return {
      date: candidate.date,
      what: choices.rows.candidate(
        nameOf(candidate.part),
        candidate.name ?? source ?? candidate.source,
      ),
    };
  }
  const choice = findRow(project.choices, id);
  return choice && { date: choice.date, what: choices.rows.chosen(choice.because) };
}
