import type { Project } from '../book/types.ts';
import type { Day } from '../time/day.ts';
import type { Words } from '../words/words.ts';

/** What a row about finding and choosing is, in a few words; undefined for an id that none of them has. */
export function describeDecision(
  project: Project,
  id: string,
  { parts: { choices, survey } }: Words,
): { readonly date: Day; readonly what: string } | undefined {
  const nameOf = (part: string) => project.parts.find((item) => item.id === part)?.name ?? part;
  const finding = project.findings.find((row) => row.id === id);
  if (finding) {
    const { date, part, found, place } = finding;
    const [name, what] = [nameOf(part), survey.found[found]];
    const { rows } = choices;
    return { date, what: place ? rows.foundAt(name, what, place) : rows.found(name, what) };
  }
  const candidate = project.candidates.find((row) => row.id === id);
  if (candidate) {
    const source = project.sources.find((item) => item.id === candidate.source)?.name;
    return {
      date: candidate.date,
      what: choices.rows.candidate(
        nameOf(candidate.part),
        candidate.name ?? source ?? candidate.source,
      ),
    };
  }
  const choice = project.choices.find((row) => row.id === id);
  return choice && { date: choice.date, what: choices.rows.chosen(choice.because) };
}
