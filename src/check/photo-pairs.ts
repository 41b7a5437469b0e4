import type { UsedComponent } from '../read/mdx.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import type { Rule } from './rule.ts';

/** A pair shows two photos, and has points in both of them or in none; only what is aligned can be revealed. */
export const photoPairsFit: Rule = ({ project }) =>
  project.entries.flatMap(({ body }) =>
    body.components.filter(({ name }) => name === 'PhotoPair').flatMap(fits),
  );

function fits(component: UsedComponent): Problem[] {
  const prop = (wanted: string) => component.props.find(({ name }) => name === wanted);
  const [before, after] = [prop('before'), prop('after')];
  const missing = (['before-at', 'after-at'] as const).filter((name) => !prop(name));
  const problems: Problem[] = [];
  if (after !== undefined && before?.literal === after.literal)
    problems.push(
      problemAt(
        after,
        'photo/pair',
        `<PhotoPair> shows "${after.literal}" twice`,
        'name the photo from before and a later one',
      ),
    );
  if (missing.length === 1)
    problems.push(
      problemAt(
        component,
        'photo/pair',
        `<PhotoPair> has two places on one photo and lacks "${missing[0]}"`,
        `add ${missing[0]}="…, …": the same two places on the other photo`,
      ),
    );
  const reveal = prop('reveal');
  if (reveal !== undefined && missing.length === 2)
    problems.push(
      problemAt(
        reveal,
        'photo/pair',
        '<PhotoPair> can reveal one photo over the other only when both are aligned',
        'add before-at="…, …" and after-at="…, …", or leave "reveal" out',
      ),
    );
  return problems;
}
