import { type Problem, problemAt } from '../read/problem.ts';
import type { Glance } from './glance.ts';
import { hiddenPlaces } from './hidden-places.ts';
import type { ShownPhoto } from './shown.ts';

/** Endings that a file of each format may have. */
const ENDINGS: Readonly<Record<string, readonly string[]>> = {
  jpeg: ['jpg', 'jpeg', 'jpe', 'jfif'],
  png: ['png'],
  webp: ['webp'],
  tiff: ['tif', 'tiff'],
  heif: ['heic', 'heif', 'avif', 'hif'],
  gif: ['gif'],
};

/** What is odd about a photo that can be published all the same, and what points at a hidden place of it. */
export function oddities(shown: ShownPhoto, glance: Glance): Problem[] {
  const { file, record } = shown;
  const warn = (code: string, message: string, fix: string): Problem => ({
    ...problemAt({ file, line: 1, column: 1 }, code, message, fix),
    level: 'warning',
  });
  const { width, height, format, space, depth, pages, gps } = glance;
  const found: Problem[] = hiddenPlaces(shown, glance);
  if (gps && !record?.nothingToHide && !record?.hide?.length)
    found.push(
      warn(
        'photo/not-looked-at',
        'the photo says where it was taken, and nobody has said what must be hidden on it; the place itself is never published',
        'in photos.yaml, list areas under "hide", or write "nothing-to-hide: true"',
      ),
    );
  if (!ENDINGS[format]?.some((ending) => file.toLowerCase().endsWith(`.${ending}`)))
    found.push(
      warn(
        'photo/ending',
        `the photo is a ${format.toUpperCase()} file by its content`,
        `let its name end in .${ENDINGS[format]?.[0] ?? format}`,
      ),
    );
  if (pages > 1)
    found.push(
      warn(
        'photo/animated',
        `the file holds ${pages} pictures; only the first is published`,
        'save the picture you mean as JPEG',
      ),
    );
  if (space === 'cmyk')
    found.push(
      warn(
        'photo/print-colours',
        'the photo is in print colours (CMYK); they are turned into sRGB and may look different',
        'export it anew in sRGB',
      ),
    );
  if (depth !== 'uchar')
    found.push(
      warn(
        'photo/depth',
        'the photo has more than 8 bits for each colour; 8 are published',
        'export it anew with 8 bits',
      ),
    );
  if (width < 16 || height < 16)
    found.push(
      warn(
        'photo/tiny',
        `the photo is ${width} × ${height} pixels, too small to show anything`,
        'put the original there',
      ),
    );
  return found;
}

/** A photo that can't be read at all. */
export function unreadable(file: string, reason: string, head: Uint8Array): Problem {
  const place = { file, line: 1, column: 1 };
  const [message, fix] = explain(reason, Buffer.from(head.subarray(0, 32)));
  return problemAt(place, 'photo/unreadable', `the photo can't be read: ${message}`, fix);
}

function explain(reason: string, head: Buffer): [message: string, fix: string] {
  const fix = 'export it anew as JPEG';
  if (head.length === 0) return ['the file is empty', 'copy it from the camera again'];
  // ISO/IEC 23008-12: the brands of HEVC pictures; the image library's usual builds read AV1 ones alone.
  if (/^ftyp(hei|hev|mif1|msf1)/.test(head.toString('latin1', 4, 16)))
    return [
      'it is HEIC, which the image library here does not read',
      `${fix}, or set the phone to take JPEG ("most compatible")`,
    ];
  if (/pixel limit/.test(reason))
    return ['it asks for more than 100 megapixels', 'make it smaller'];
  if (/unsupported image format/.test(reason)) return ['it is no picture', fix];
  // "Unknown": the library keeps one text for all its threads, and a photo read beside this one may have cleared it.
  // What it tells of a file's head it says itself, so only pixels that could not be read end here.
  if (
    /unknown error|premature end|truncat|corrupt|unexpected end|not enough|read error|bad/i.test(
      reason,
    )
  )
    return ['it is damaged or cut off', 'copy it from the camera again'];
  return [reason, fix];
}
