import { problemAt } from '../read/problem.ts';
import type { Rule } from './rule.ts';

/** The source of an hours row is a machine that can be worked on. */
export const hoursAreOfAMachine: Rule = ({ project }) => {
  const kinds = new Map(project.lists.sources.map(({ value }) => [value.id, value.kind]));
  return project.lists.hours.flatMap(({ raw, value: { source } }) => {
    const kind = source && kinds.get(source);
    if (kind === undefined || kind === 'base' || kind === 'donor') return [];
    return [
      problemAt(
        raw.placeOf(['source']),
        'hours/no-machine',
        `source: "${source}" is no machine that is taken apart (its kind is "${kind}")`,
        'name a base or a donor, or leave it empty',
      ),
    ];
  });
};
