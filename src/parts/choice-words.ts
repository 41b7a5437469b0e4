import type { Project } from '../book/types.ts';
import type { Words } from '../words/words.ts';
import type { GroupWay } from './group-sums.ts';

/** What a choice picked: `Patched (The bus's own, repaired)`, one for each part. */
export function pickedText(project: Project, ids: readonly string[]): string {
  const nameOf = (records: readonly { id: string; name: string }[], key: string) =>
    records.find(({ id }) => id === key)?.name ?? key;
  const picked = ids.flatMap((id) => {
    const row = project.candidates.findLast((candidate) => candidate.id === id);
    if (row === undefined) return [];
    const name = row.name ?? nameOf(project.sources, row.source);
    return [ids.length > 1 ? `${nameOf(project.parts, row.part)}: ${name}` : name];
  });
  return picked.join('; ');
}

/** What a way to get a group still lacks, in words; empty when it has all. */
export function lackingText(project: Project, { without }: GroupWay, { parts }: Words): string {
  const names = without.map((id) => project.parts.find((part) => part.id === id)?.name ?? id);
  return names.length > 0 ? parts.choices.ways.lacking(names.join(', ')) : '';
}
