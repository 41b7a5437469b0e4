import { problemAt } from '../read/problem.ts';
import type { Rule } from './rule.ts';

/** No phase waits for itself, directly or round a corner. Each loop is named once, at the phase that closes it. */
export const phasesDoNotLoop: Rule = ({ project }) => {
  const phases = new Map(project.lists.phases.map((item) => [item.value.id, item]));
  const done = new Set<string>();
  const problems: ReturnType<Rule> = [];

  function visit(id: string, trail: readonly string[]): void {
    if (done.has(id)) return;
    const phase = phases.get(id);
    for (const [index, before] of (phase?.value.after ?? []).map((link) => link.id).entries()) {
      const start = [...trail, id].indexOf(before);
      if (start === -1) {
        visit(before, [...trail, id]);
        continue;
      }
      const loop = [...[...trail, id].slice(start), before];
      const place = phase?.raw.placeOf(['after', index]);
      if (place)
        problems.push(
          problemAt(
            place,
            'phase/loop',
            `the phase "${id}" waits for itself: ${loop.join(' waits for ')}`,
            `remove one of the "after" in this ring`,
          ),
        );
    }
    done.add(id);
  }

  for (const id of phases.keys()) visit(id, []);
  return problems;
};
