import { areApart, parseTwoPoints, type TwoPoints } from '../model/two-points.ts';
import type { UsedComponent } from '../read/mdx.ts';
import type { Place } from '../read/problem.ts';

/** The same view before and after, with two places in each photo that are the same on the machine. */
export interface AlignedPair {
  readonly before: string;
  readonly after: string;
  readonly beforeAt: TwoPoints;
  readonly afterAt: TwoPoints;
}

/** A pair of a project, and where its entry shows it. */
export interface ShownPair extends AlignedPair {
  readonly project: string;
  readonly place: Place;
}

export type Side = 'before' | 'after';

/** Pairs of a project that are laid one over the other; those without points stand beside one another as they are. */
export function shownPairs({
  id,
  entries,
}: {
  readonly id: string;
  readonly entries: readonly { readonly components: readonly UsedComponent[] }[];
}): ShownPair[] {
  return entries.flatMap(({ components }) =>
    components
      .filter(({ name }) => name === 'PhotoPair')
      .flatMap((component) => {
        const props = component.props.map(({ name, literal }) => [name, literal] as const);
        const pair = alignedPair(Object.fromEntries(props));
        return pair ? [{ ...pair, project: id, place: component }] : [];
      }),
  );
}

/** A pair by the properties of its component; undefined where these don't align it. */
export function alignedPair(props: Readonly<Record<string, unknown>>): AlignedPair | undefined {
  const { before, after } = props;
  const beforeAt = parseTwoPoints(String(props['before-at']));
  const afterAt = parseTwoPoints(String(props['after-at']));
  if (typeof before !== 'string' || typeof after !== 'string' || !beforeAt || !afterAt)
    return undefined;
  return areApart(beforeAt) && areApart(afterAt) ? { before, after, beforeAt, afterAt } : undefined;
}

/** What a half of a pair is listed under among the published photos. */
export function halfKey(
  project: string,
  { before, after, beforeAt, afterAt }: AlignedPair,
  side: Side,
): string {
  return `${project}/${before} ${beforeAt.join(' ')} / ${after} ${afterAt.join(' ')} / ${side}`;
}
