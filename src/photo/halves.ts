import { type Problem, problemAt } from '../read/problem.ts';
import { daysBetween } from '../time/day.ts';
import { align } from './align.ts';
import type { PhotoIndex } from './cache.ts';
import { editedSize } from './edit.ts';
import type { SeenPhoto } from './look.ts';
import { halfKey, type ShownPair } from './pairs.ts';
import { WIDTHS } from './recipe.ts';

/** Less than this share of the photo from before in the common frame shows nothing. */
const LEAST_SHARED = 0.1;

/** More than so many times larger no photo is made for a pair. */
const MOST_SCALE = 4;

/** The halves of pairs, each one more picture of its original, and what is wrong with pairs that can't be aligned. */
export interface Halves {
  readonly photos: readonly SeenPhoto[];
  readonly problems: readonly Problem[];
}

/** Lays the photos of pairs over one another; a pair of which one can't be read is left out. */
export function halvesOf(
  pairs: readonly ShownPair[],
  photos: readonly SeenPhoto[],
  index: PhotoIndex,
): Halves {
  const byKey = new Map(photos.map((photo) => [photo.key, photo]));
  const laid = pairs.map((pair): Halves => {
    const before = byKey.get(`${pair.project}/${pair.before}`);
    const after = byKey.get(`${pair.project}/${pair.after}`);
    return before && after ? layOver(pair, before, after, index) : { photos: [], problems: [] };
  });
  const halves = new Map(laid.flatMap((pair) => pair.photos.map((half) => [half.key, half])));
  return { photos: [...halves.values()], problems: laid.flatMap(({ problems }) => problems) };
}

function layOver(pair: ShownPair, before: SeenPhoto, after: SeenPhoto, index: PhotoIndex): Halves {
  const { beforeAt, afterAt, project, place } = pair;
  const aligned = align(
    { ...editedSize(before.glance, before.record ?? {}), at: beforeAt },
    { ...editedSize(after.glance, after.record ?? {}), at: afterAt },
    WIDTHS.at(-1) ?? Number.POSITIVE_INFINITY,
  );
  if (aligned.shared < LEAST_SHARED || aligned.scale > MOST_SCALE)
    return {
      photos: [],
      problems: [
        problemAt(
          place,
          'photo/pair',
          `<PhotoPair> by these points "${pair.before}" and "${pair.after}" have too little in common`,
          'let before-at and after-at name the same two places in the same order',
        ),
      ],
    };
  const half = (photo: SeenPhoto, side: 'before' | 'after'): SeenPhoto => {
    const key = halfKey(project, pair, side);
    const known = index[key]?.stamp === photo.stamp ? index[key] : undefined;
    return { ...photo, key, frame: aligned[side], known };
  };
  return {
    photos: [half(before, 'before'), half(after, 'after')],
    problems: inOrder(pair, before, after),
  };
}

function inOrder({ place }: ShownPair, before: SeenPhoto, after: SeenPhoto): Problem[] {
  const [from, to] = [before, after].map(({ record, glance }) => record?.taken ?? glance.taken);
  if (from === undefined || to === undefined || daysBetween(from, to) >= 0) return [];
  const message = `<PhotoPair> the photo from before was taken on ${from}, after the later one (${to})`;
  return [
    {
      ...problemAt(
        place,
        'photo/pair-order',
        message,
        'change them over, or correct "taken" in photos.yaml',
      ),
      level: 'warning',
    },
  ];
}
