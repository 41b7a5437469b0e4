import { type Problem, problemAt } from '../read/problem.ts';
import type { Path } from '../read/raw.ts';
import { unknownId } from './references.ts';
import type { Rule, RuleInput } from './rule.ts';

/** The identity page names machines, and releases only what is there. */
export const identityIsOfAMachine: Rule = (input) => {
  const identity = input.project.info?.value.identity;
  if (identity === undefined) return [];
  return [
    ...isMachine(input, ['identity', 'keeps'], identity.keeps),
    ...identity.marks.flatMap(({ source, value, released }, index) => {
      const path = ['identity', 'marks', index];
      return [
        ...isMachine(input, [...path, 'source'], source),
        ...(released && value === undefined ? [nothingToRelease(input, path)] : []),
      ];
    }),
    ...identity.papers.flatMap(({ source }, index) =>
      isMachine(input, ['identity', 'papers', index, 'source'], source),
    ),
  ];
};

function isMachine({ project, known }: RuleInput, path: Path, id: string | undefined): Problem[] {
  const { info, lists } = project;
  if (id === undefined || info === undefined) return [];
  const place = info.raw.placeOf(path);
  const kind = lists.sources.find(({ value }) => value.id === id)?.value.kind;
  if (kind === undefined) return unknownId(id, 'sources', place, known);
  if (kind === 'base' || kind === 'donor') return [];
  const machines = lists.sources
    .filter(({ value }) => value.kind === 'base' || value.kind === 'donor')
    .map(({ value }) => value.id);
  return [
    problemAt(
      place,
      'identity/no-machine',
      `${path.join('.')}: "${id}" is no machine (its kind is "${kind}")`,
      machines.length > 0 ? `one of: ${machines.join(', ')}` : 'add a base or a donor to sources',
    ),
  ];
}

function nothingToRelease({ project }: RuleInput, path: Path): Problem {
  // The rule has looked: there is an identity, so there is a project.yaml.
  const raw = (project.info as NonNullable<typeof project.info>).raw;
  return problemAt(
    raw.placeOf([...path, 'released']),
    'identity/released',
    `${path.join('.')}: "released: true" has no value beside it`,
    'add value: … with the number as it is stamped, or write released: false',
  );
}
