import { createHash } from 'node:crypto';
import type { AvifOptions, WebpOptions } from 'sharp';
import type { PhotoRecord } from '../model/kinds.ts';
import type { Frame } from './frame.ts';
import { LIBRARY } from './library.ts';
import { FORMATS, type PhotoSize } from './manifest.ts';

/** Widths that are published, in pixels. */
export const WIDTHS = [480, 960, 1920] as const;

/**
 * How each format is written. Against the encoder's defaults (effort 4, 4:4:4) these are many times faster; `npm run bench -- photos`
 * measures what that costs in bytes and likeness.
 */
export const ENCODERS: { readonly avif: AvifOptions; readonly webp: WebpOptions } = {
  avif: { quality: 52, effort: 0, chromaSubsampling: '4:2:0' },
  webp: { quality: 80, effort: 2 },
};

/** The colour of a hidden area. */
export const FILL = '#4a4d52';

/** Taller than this no picture is published: WebP ends at 16383 pixels (RFC 9649, section 3.4). */
const MOST_HEIGHT = 8000;

/** What is done to one photo before it is made smaller. */
export type Edits = Pick<PhotoRecord, 'hide' | 'crop' | 'straighten'>;

/** Whether a photo is changed at all before it is made smaller. */
export function isEdited({ hide, crop, straighten }: Edits): boolean {
  return (hide?.length ?? 0) > 0 || crop !== undefined || (straighten ?? 0) !== 0;
}

/** Names what is done to a photo, and by what; another name, other pixels, since names are published as lasting. Raise the number when the steps themselves change. */
export function recipeName({ hide, crop, straighten }: Edits, frame?: Frame): string {
  const steps = {
    version: 4,
    library: LIBRARY,
    encoders: ENCODERS,
    fill: FILL,
    areas: (hide ?? []).map(({ box, outline }) => box ?? outline),
    crop: crop ?? null,
    straighten: straighten ?? 0,
    ...(frame && { frame }),
  };
  return createHash('sha256').update(JSON.stringify(steps)).digest('hex').slice(0, 8);
}

/** The sizes that a picture of so many pixels is published in, with the names of their files. */
export function sizesOf(
  picture: { readonly width: number; readonly height: number },
  stem: string,
): PhotoSize[] {
  const most = Math.floor(Math.min(picture.width, (picture.width * MOST_HEIGHT) / picture.height));
  const widths = [...new Set(WIDTHS.map((width) => Math.max(1, Math.min(width, most))))];
  return widths.map((width) => ({
    width,
    height: Math.max(1, Math.round((picture.height * width) / picture.width)),
    files: Object.fromEntries(
      FORMATS.map((format) => [format, `${stem}-${width}.${format}`]),
    ) as PhotoSize['files'],
  }));
}
