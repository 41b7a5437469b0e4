import type { Project } from '../book/types.ts';
import type { Day } from '../time/day.ts';
import { foundNames } from './survey-words.ts';

/** What a row about finding and choosing is, in a few words; undefined for an id that none of them has. */
export function describeDecision(
  project: Project,
  id: string,
): { readonly date: Day; readonly what: string } | undefined {
  const nameOf = (part: string) => project.parts.find((item) => item.id === part)?.name ?? part;
  const finding = project.findings.find((row) => row.id === id);
  if (finding) {
    const { date, part, found, place } = finding;
    const where = place ? `, ${place}` : '';
    return { date, what: `Found: ${nameOf(part)}, ${foundNames[found]}${where}` };
  }
  const candidate = project.candidates.find((row) => row.id === id);
  if (candidate) {
    const source = project.sources.find((item) => item.id === candidate.source)?.name;
    return {
      date: candidate.date,
      what: `Candidate: ${nameOf(candidate.part)}, ${candidate.name ?? source}`,
    };
  }
  const choice = project.choices.find((row) => row.id === id);
  return choice && { date: choice.date, what: `Chosen: ${choice.because}` };
}
