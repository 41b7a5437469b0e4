import { expect, test } from 'vitest';
import { dependentsOf } from '../../src/measure/dependents.ts';
import { measuredProject } from './measured-project.ts';

test('dependentsOf(spec) names the specs that are worked out of it directly, each once', () => {
  const { recipes } = measuredProject({
    specs: {
      a: {},
      b: {},
      twice: { formula: 'x + y', inputs: { x: 'a', y: 'a' } },
      sum: { formula: 'a + b + c', inputs: { a: 'a', b: 'b', c: '1 mm' } },
      half: { formula: 's/2', inputs: { s: 'sum' } },
    },
  });
  const of = (spec: string) => dependentsOf(spec, recipes);
  expect([of('a'), of('b'), of('sum'), of('half')]).toEqual([
    ['twice', 'sum'],
    ['sum'],
    ['half'],
    [],
  ]);
});
