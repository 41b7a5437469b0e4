import { z } from 'zod';
import { oneOf } from './fields.ts';

/** What may have to be hidden on a photo. */
export const hiddenThings = ['plate', 'identity', 'face', 'address', 'document', 'other'] as const;

/** How far a picture may be turned to straighten it, in degrees. */
const MOST_DEGREES = 15;

/** A place on a picture, in fractions of its width and height from the top left. */
export type Point = readonly [across: number, down: number];

/** A rectangle in fractions of a picture: left, top, width, height. */
export type Box = readonly [left: number, top: number, width: number, height: number];

/** `0.41 0.62`, or a list of two numbers. */
export const point = () => fractions(2, ([across = 0, down = 0]): Point => [across, down]);

/** `0.41 0.62 0.18 0.06`, or a list of four numbers: a rectangle that lies inside the picture. */
export const box = () =>
  fractions(4, ([left = 0, top = 0, width = 0, height = 0]): Box | undefined =>
    width > 0 && height > 0 && left + width <= 1.000001 && top + height <= 1.000001
      ? [left, top, width, height]
      : undefined,
  );

/** An area of a photo that is filled before anything is published: a rectangle, or an outline of three points or more. */
export const areaSchema = z
  .strictObject({
    what: oneOf(hiddenThings),
    box: box().optional(),
    outline: z.array(point()).optional(),
  })
  .superRefine((area, context) => {
    if (
      (area.box === undefined) !== (area.outline === undefined) &&
      (area.outline?.length ?? 3) > 2
    )
      return;
    context.issues.push({
      code: 'custom',
      message: 'is not one box or one outline of three points or more',
      input: area,
      params: { name: 'area', fix: 'write box: [left, top, width, height], as fractions' },
    });
  });

export type HiddenArea = z.output<typeof areaSchema>;

/** Degrees, clockwise, by which a photo is turned to stand level. */
export const degrees = () =>
  z
    .string()
    .transform((written, context): number => {
      const value = /^-?\d+(\.\d+)?$/.test(written.trim()) ? Number(written) : Number.NaN;
      if (Math.abs(value) <= MOST_DEGREES) return value;
      context.issues.push({
        code: 'custom',
        message: `is not an angle from -${MOST_DEGREES} to ${MOST_DEGREES}`,
        input: written,
        params: { name: 'angle', fix: 'write degrees, clockwise, like -1.5' },
      });
      return z.NEVER;
    })
    .meta({
      editor: { type: ['string', 'number'] },
      description: 'degrees, clockwise, that level the photo',
    });

/** So many numbers from 0 to 1, in a list or in one text with spaces between. */
function fractions<Made>(count: number, make: (numbers: number[]) => Made | undefined) {
  return z
    .union([z.array(z.string()), z.string()])
    .transform((written, context): Made => {
      const texts = typeof written === 'string' ? written.trim().split(/[\s,]+/) : written;
      const numbers = texts.map((text) =>
        /^(?:\d+(?:\.\d+)?|\.\d+)$/.test(text.trim()) ? Number(text) : -1,
      );
      const fit = numbers.length === count && numbers.every((one) => one >= 0 && one <= 1);
      const made = fit ? make(numbers) : undefined;
      if (made !== undefined) return made;
      context.issues.push({
        code: 'custom',
        message: `is not ${count === 2 ? 'a point' : 'a rectangle'} inside the photo`,
        input: written,
        params: {
          name: 'fraction',
          fix:
            count === 2
              ? 'write across and down from the top left as fractions, like [0.25, 0.5]'
              : 'write left, top, width and height as fractions, like [0.25, 0.5, 0.2, 0.1]',
        },
      });
      return z.NEVER;
    })
    .meta({
      editor: {
        anyOf: [
          {
            type: 'array',
            items: { type: ['number', 'string'] },
            minItems: count,
            maxItems: count,
          },
          { type: 'string' },
        ],
      },
    });
}
