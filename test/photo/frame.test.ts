import fc from 'fast-check';
import sharp, { type Sharp } from 'sharp';
import { describe, expect, test } from 'vitest';
import { align } from '../../src/photo/align.ts';
import { intoFrame, placed } from '../../src/photo/frame.ts';

/** A white disc on black, drawn by librsvg, whose middle is known to a hundredth of a pixel. */
const DISC = [150.5, 120.5] as const;
const disc = await sharp(
  Buffer.from(
    `<svg xmlns="http://www.w3.org/2000/svg" width="400" height="300"><rect width="400" height="300"/><circle cx="${DISC[0]}" cy="${DISC[1]}" r="20" fill="#fff"/></svg>`,
  ),
)
  .removeAlpha()
  .png()
  .toBuffer();

/** Middle of what is white, in pixels from the top left corner. */
async function middle(picture: Sharp): Promise<[number, number]> {
  const { data, info } = await picture.raw().toBuffer({ resolveWithObject: true });
  let [sum, across, down] = [0, 0, 0];
  for (let pixel = 0; pixel < info.width * info.height; pixel++) {
    const white = data[pixel * info.channels] ?? 0;
    sum += white;
    across += white * ((pixel % info.width) + 0.5);
    down += white * (Math.floor(pixel / info.width) + 0.5);
  }
  return [across / sum, down / sum];
}

test.each([
  [0, 1, -60.4, -40.3],
  [0, 0.8, -30, -20],
  [0, 1.3, -100, -60.2],
  [7, 1.25, -100, -100],
  [-7, 1, -80, -20],
  [-20, 0.9, -100, 20],
  [30, 1, 0, -100.7],
])(
  'a photo turned by %i° and made %d times as large lies where it should to a twentieth of a pixel',
  async (turn, scale, x, y) => {
    const angle = (turn * Math.PI) / 180;
    const placing = { a: scale * Math.cos(angle), b: scale * Math.sin(angle), x, y };
    const frame = { width: 180, height: 150, placing };
    const laid = await intoFrame(sharp(disc), { width: 400, height: 300 }, frame);
    const [found, wanted] = [await middle(laid), placed(DISC, placing)];
    expect(Math.hypot(found[0] - wanted[0], found[1] - wanted[1])).toBeLessThan(0.05);
  },
);

const fraction = () => fc.double({ min: 0, max: 1, noNaN: true });
const points = () =>
  fc
    .tuple(fc.tuple(fraction(), fraction()), fc.tuple(fraction(), fraction()))
    .filter(([[x1, y1], [x2, y2]]) => Math.hypot(x2 - x1, y2 - y1) > 0.05);
const half = () =>
  fc.record({
    width: fc.integer({ min: 200, max: 6000 }),
    height: fc.integer({ min: 200, max: 6000 }),
    at: points(),
  });

describe('a common frame', () => {
  test('is filled by both photos, and has both points of both at the same places', () => {
    fc.assert(
      fc.property(half(), half(), (one, other) => {
        const { before, after, shared } = align(one, other, 1920);
        if (shared < 0.05) return;
        for (const [photo, { placing, width, height }] of [
          [one, before],
          [other, after],
        ] as const) {
          // Back from the frame's corners: (x', y') − shift, divided by a + bi.
          const square = placing.a ** 2 + placing.b ** 2;
          for (const [x, y] of [
            [0, 0],
            [width, 0],
            [width, height],
            [0, height],
          ] as const) {
            const [across, down] = [x - placing.x, y - placing.y];
            const back = [
              (across * placing.a + down * placing.b) / square,
              (down * placing.a - across * placing.b) / square,
            ];
            expect(back[0]).toBeGreaterThanOrEqual(-0.001);
            expect(back[1]).toBeGreaterThanOrEqual(-0.001);
            expect(back[0]).toBeLessThanOrEqual(photo.width + 0.001);
            expect(back[1]).toBeLessThanOrEqual(photo.height + 0.001);
          }
        }
        for (const index of [0, 1] as const) {
          const [x1, y1] = placed(
            [one.at[index][0] * one.width, one.at[index][1] * one.height],
            before.placing,
          );
          const [x2, y2] = placed(
            [other.at[index][0] * other.width, other.at[index][1] * other.height],
            after.placing,
          );
          expect(Math.hypot(x2 - x1, y2 - y1)).toBeLessThan(0.001);
        }
      }),
    );
  });
});
