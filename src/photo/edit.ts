import type { OverlayOptions, Sharp } from 'sharp';
import type { HiddenArea, Point } from '../model/photo-fields.ts';
import { fromPixels, type Pixels, pixelsOf, type Size } from './pixels.ts';
import { type Edits, FILL } from './recipe.ts';

/** Size of a photo once it is straightened and cropped. */
export function editedSize(upright: Size, { straighten, crop }: Edits): Size {
  return cropped(straightened(upright, straighten ?? 0), crop);
}

/**
 * The upright photo at its full size with hidden areas filled, straightened and cropped, in that order.
 * The areas are filled before anything is made smaller, so that no pixel of a smaller size was mixed from a hidden one.
 */
export async function edit(photo: Sharp, edits: Edits): Promise<Sharp> {
  const whole = await pixelsOf(photo);
  const { straighten = 0, crop, hide = [] } = edits;
  // Turning and cutting come after filling, in steps of their own: in one pipeline overlays would be laid on last.
  const filled = hide.length === 0 ? whole : await pixelsOf(fill(whole, hide));
  const level = straightened(filled, straighten);
  const turned =
    straighten === 0
      ? filled
      : await pixelsOf(fromPixels(filled).rotate(straighten, { background: FILL }));
  const kept = cropped(level, crop);
  return fromPixels(turned).extract({
    left: Math.floor((turned.width - level.width) / 2 + (crop?.[0] ?? 0) * level.width),
    top: Math.floor((turned.height - level.height) / 2 + (crop?.[1] ?? 0) * level.height),
    ...kept,
  });
}

/** The largest part with the same proportions that has no empty corner after turning. */
export function straightened({ width, height }: Size, degrees: number): Size {
  if (degrees === 0) return { width, height };
  const angle = (Math.abs(degrees) * Math.PI) / 180;
  const [sine, cosine] = [Math.sin(angle), Math.cos(angle)];
  const scale = Math.min(
    width / (width * cosine + height * sine),
    height / (width * sine + height * cosine),
  );
  return {
    width: Math.max(1, Math.floor(width * scale)),
    height: Math.max(1, Math.floor(height * scale)),
  };
}

function cropped({ width, height }: Size, crop: Edits['crop']): Size {
  return {
    width: Math.max(1, Math.floor(width * (crop?.[2] ?? 1))),
    height: Math.max(1, Math.floor(height * (crop?.[3] ?? 1))),
  };
}

function fill(picture: Pixels, areas: readonly HiddenArea[]): Sharp {
  return fromPixels(picture).composite(areas.map((area) => overlay(outlineOf(area), picture)));
}

/** An area as an outline, in fractions of the upright photo. */
export function outlineOf({ box, outline }: HiddenArea): readonly Point[] {
  if (box === undefined) return outline ?? [];
  const [left, top, width, height] = box;
  const [right, bottom] = [left + width, top + height];
  return [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ];
}

/** A flat shape over the area, with two pixels more all round: a pixel that is hidden in part is hidden whole. */
function overlay(outline: readonly Point[], { width, height }: Size): OverlayOptions {
  const across = outline.map(([x]) => x * width);
  const down = outline.map(([, y]) => y * height);
  const left = Math.max(0, Math.floor(Math.min(...across)) - 2);
  const top = Math.max(0, Math.floor(Math.min(...down)) - 2);
  const right = Math.min(width, Math.ceil(Math.max(...across)) + 2);
  const bottom = Math.min(height, Math.ceil(Math.max(...down)) + 2);
  const points = outline.map((_, index) => [(across[index] ?? 0) - left, (down[index] ?? 0) - top]);
  const svg =
    `<svg xmlns="http://www.w3.org/2000/svg" width="${right - left}" height="${bottom - top}">` +
    `<polygon points="${points.join(' ')}" fill="${FILL}" stroke="${FILL}" stroke-width="4"` +
    ` stroke-linejoin="miter" shape-rendering="crispEdges"/></svg>`;
  return { input: Buffer.from(svg), left, top };
}
