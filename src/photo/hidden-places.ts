import type { Point } from '../model/photo-fields.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import { outlineOf, straightened } from './edit.ts';
import type { Size } from './pixels.ts';
import type { Edits } from './recipe.ts';
import type { ShownPhoto } from './shown.ts';

/** What points at a place of a photo that is hidden on it. */
export function hiddenPlaces({ file, record, places }: ShownPhoto, size: Size): Problem[] {
  const { hide = [] } = record ?? {};
  return places.flatMap(({ what, at }) => {
    const place = uprightPlace(at, record ?? {}, size);
    const area = hide.find((hidden) => isInside(place, outlineOf(hidden)));
    if (area === undefined) return [];
    return [
      problemAt(
        { file, line: 1, column: 1 },
        'photo/hidden-place',
        `${what} points at ${at.join(' ')}, which lies in a hidden area (${area.what})`,
        'point beside the area, or leave it out',
      ),
    ];
  });
}

/** A place of the published photo, as a fraction of the upright one: the way back from cropping and straightening. */
export function uprightPlace([x, y]: Point, { crop, straighten = 0 }: Edits, size: Size): Point {
  const level = straightened(size, straighten);
  const [left, top, wide, high] = crop ?? [0, 0, 1, 1];
  const across = (left + x * wide - 0.5) * level.width;
  const down = (top + y * high - 0.5) * level.height;
  const angle = (straighten * Math.PI) / 180;
  const [sine, cosine] = [Math.sin(angle), Math.cos(angle)];
  return [
    0.5 + (across * cosine + down * sine) / size.width,
    0.5 + (down * cosine - across * sine) / size.height,
  ];
}

/** Whether a point lies in an outline: a line from it to the right crosses the outline an odd number of times. */
function isInside([x, y]: Point, outline: readonly Point[]): boolean {
  const crossed = outline.filter(([x1, y1], index) => {
    const [x2, y2] = outline[(index + 1) % outline.length] ?? [x1, y1];
    return y1 > y !== y2 > y && x < x1 + ((x2 - x1) * (y - y1)) / (y2 - y1);
  });
  return crossed.length % 2 === 1;
}
