import type { Sharp } from 'sharp';
import type { Point } from '../model/photo-fields.ts';
import { fromPixels, pixelsOf, type Size } from './pixels.ts';

/**
 * Where a point of a photo comes to lie, in pixels from the top left corner: turned, scaled and moved.
 *
 *     x' = a·x − b·y + x₀      y' = b·x + a·y + y₀
 */
export interface Placing {
  readonly a: number;
  readonly b: number;
  readonly x: number;
  readonly y: number;
}

/** A rectangle that a photo is laid into, and how; the photo fills it. */
export interface Frame extends Size {
  readonly placing: Placing;
}

/** Where a point comes to lie. */
export function placed([x, y]: Point, place: Placing): Point {
  return [place.a * x - place.b * y + place.x, place.b * x + place.a * y + place.y];
}

/** One placing after another. */
export function times(last: Placing, first: Placing): Placing {
  const [x, y] = placed([first.x, first.y], last);
  return {
    a: last.a * first.a - last.b * first.b,
    b: last.b * first.a + last.a * first.b,
    x,
    y,
  };
}

/** A photo laid into its frame: first made as small as it becomes, so that no pixel is left out, then turned, enlarged and moved. */
export async function intoFrame(photo: Sharp, from: Size, frame: Frame): Promise<Sharp> {
  const { a, b, x, y } = frame.placing;
  const scale = Math.min(1, Math.hypot(a, b));
  const width = Math.max(1, Math.round(from.width * scale));
  const height = Math.max(1, Math.round(from.height * scale));
  const sized = await pixelsOf(photo.resize(width, height, { fit: 'fill' }));
  // What is left to do once it is a whole number of pixels: a turn, nearly.
  const [wide, high] = [from.width / width, from.height / height];
  const [a1, b1, a2, b2] = [a * wide, -b * high, b * wide, a * high];
  // The library counts from the middle of the first pixel, and cuts its outcome to the outline of the turned picture.
  const shift: Point = [x + (a1 + b1 - 1) / 2, y + (a2 + b2 - 1) / 2];
  const whole = shift.map(Math.round);
  const left = Math.round(Math.min(0, a1 * width, b1 * height, a1 * width + b1 * height));
  const top = Math.round(Math.min(0, a2 * width, b2 * height, a2 * width + b2 * height));
  const turned = await pixelsOf(
    fromPixels(sized).affine(
      [
        [a1, b1],
        [a2, b2],
      ],
      { odx: shift[0] - (whole[0] ?? 0), ody: shift[1] - (whole[1] ?? 0), interpolator: 'bicubic' },
    ),
  );
  return fromPixels(turned).extract({
    left: -left - (whole[0] ?? 0),
    top: -top - (whole[1] ?? 0),
    width: frame.width,
    height: frame.height,
  });
}
