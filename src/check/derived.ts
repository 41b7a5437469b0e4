import type { Recipe } from '../measure/recipe.ts';
import { isWorkedOut } from '../measure/recipe.ts';
import { inputSpecsOf } from '../measure/worked.ts';
import { suggest } from '../read/nearest.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import type { Path, RawRecord } from '../read/raw.ts';
import { valuesOfProject } from './project-values.ts';
import type { Rule, RuleInput } from './rule.ts';

/** A derived spec can be put together, goes round in no ring, has no readings of its own, and its values are possible. */
export const derivedSpecsWorkOut: Rule = (input) => {
  const { lists } = input.project;
  if (input.project.lost.kinds.has('specs')) return [];

  const measured = valuesOfProject(input.project);
  const ring = ringIn(measured.recipes);
  const readings = Map.groupBy(lists.readings, ({ value }) => value.spec);
  const impossibles = Map.groupBy(measured.impossible, (item) => item.spec);
  return lists.specs.flatMap(({ raw, value: spec }): Problem[] => {
    if (!isWorkedOut(spec))
      return strayFields(
        spec.id,
        raw,
        Object.keys(spec.inputs ?? {}).length > 0 || (spec.carried ?? []).length > 0,
      );
    const at = (path: Path) => raw.placeOf(path);
    const mistakes = (measured.mistakes.get(spec.id) ?? [])
      .filter(({ wrong }) => !namesALostSpec(wrong, input))
      .map(({ path, wrong, fix }) =>
        problemAt(at(path), 'derived/recipe', `${named(path)}: ${wrong}`, fix),
      );
    const looped = ring.includes(spec.id)
      ? [
          problemAt(
            at(['inputs']),
            'derived/ring',
            `the spec "${spec.id}" is worked out of itself: ${ring.join(' needs ')}`,
            'name a measured spec instead',
          ),
        ]
      : [];
    const impossible = (impossibles.get(spec.id) ?? []).map(({ date, why }) =>
      problemAt(
        at(['inputs']),
        'derived/impossible',
        `the spec "${spec.id}" can't be worked out for ${date}: ${why}`,
        'look at the readings of that day',
      ),
    );
    const own = (readings.get(spec.id) ?? []).map((item) =>
      problemAt(
        item.raw.placeOf(['spec']),
        'derived/reading',
        `"${spec.id}" is worked out of other specs and has no readings of its own`,
        'make a spec of its own for what was read',
      ),
    );
    return [...mistakes, ...looped, ...impossible, ...own];
  });
};

/** A field as a builder knows it: without the position in its list. */
function named(path: Path): string {
  return path.filter((step) => typeof step === 'string').join('.');
}

function strayFields(id: string, raw: RawRecord, stray: boolean): Problem[] {
  return stray
    ? [
        problemAt(
          raw.placeOf(['inputs']),
          'derived/no-calc',
          `the spec "${id}" has inputs and no calculation`,
          'add calc: … or formula: …',
        ),
      ]
    : [];
}

/** A spec that has a mistake of its own is not "unknown" as well. */
function namesALostSpec(wrong: string, { project }: RuleInput): boolean {
  const lost = project.lost.ids.get('specs') ?? [];
  return lost.some((id) => wrong === `unknown spec "${id}"`);
}

/** Specs that need one another in a ring, the first of them again at the end; empty when there is none. */
function ringIn(recipes: ReadonlyMap<string, Recipe>): readonly string[] {
  const done = new Set<string>();
  const visit = (id: string, trail: readonly string[]): readonly string[] => {
    const start = trail.indexOf(id);
    if (start >= 0) return [...trail.slice(start), id];
    const recipe = done.has(id) ? undefined : recipes.get(id);
    if (recipe === undefined) return [];
    done.add(id);
    for (const needed of inputSpecsOf(recipe)) {
      const ring = visit(needed, [...trail, id]);
      if (ring.length > 0) return ring;
    }
    return [];
  };
  for (const id of recipes.keys()) {
    const ring = visit(id, []);
    if (ring.length > 0) return ring;
  }
  return [];
}

/** The photo that a reading names is there. */
export const readingPhotosExist: Rule = ({ project }) =>
  project.lists.readings.flatMap(({ raw, value: { photo } }): Problem[] => {
    if (photo === undefined || project.photos.includes(photo)) return [];
    const message = `photo: "${photo}" is not in ${project.id}/photos/`;
    return [
      problemAt(
        raw.placeOf(['photo']),
        'photo/missing',
        message,
        suggest(photo, project.photos) ?? 'put the file there',
      ),
    ];
  });

/** Excluded values are named by position, some are left, and it is said why. */
export const exclusionsAreExplained: Rule = ({ project }) =>
  project.lists.readings.flatMap(({ raw, value: { excluded, because, values } }): Problem[] => {
    if (excluded === undefined) return [];
    const problems: Problem[] = [];
    const beyond = excluded.find((position) => position > values.length);
    if (beyond !== undefined)
      problems.push(
        problemAt(
          raw.placeOf(['excluded']),
          'reading/excluded',
          `excluded: there is no value ${beyond} among ${values.length}`,
          `positions go from 1 to ${values.length}`,
        ),
      );
    if (new Set(excluded).size >= values.length)
      problems.push(
        problemAt(
          raw.placeOf(['excluded']),
          'reading/excluded',
          'excluded: no value is left',
          'keep at least one',
        ),
      );
    if (because === undefined)
      problems.push(
        problemAt(
          raw.placeOf(['excluded']),
          'reading/because',
          'values are excluded without a reason',
          'add "because: …"',
        ),
      );
    return problems;
  });
