import exifr from 'exifr';
import sharp, { type Metadata } from 'sharp';
import { type Day, parseDay } from '../time/day.ts';
import { MOST_PIXELS } from './decode.ts';

/** What a photo's head says, without its pixels. */
export interface Glance {
  /** Size of the upright photo in pixels. */
  readonly width: number;
  readonly height: number;
  readonly format: string;
  readonly space: string;
  readonly depth: string;
  readonly pages: number;
  /** Day it was taken, as its camera noted it. */
  readonly taken?: Day;
  /** Whether it says where it was taken. */
  readonly gps: boolean;
}

/** What a camera or a program for photos writes. The library could draw more: vector drawings, which are programs of a kind. */
const FORMATS = new Set<string>(['jpeg', 'png', 'webp', 'tiff', 'heif', 'gif']);

/** Reads the head of a photo. @throws when it is no picture, or one that the image library can't read. */
export async function glanceAt(photo: string | Uint8Array): Promise<Glance> {
  const head = await sharp(photo, { limitInputPixels: MOST_PIXELS }).metadata();
  if (!FORMATS.has(head.format)) throw new Error('unsupported image format');
  const tags = await exifOf(head, photo);
  const taken = dayOf(tags.DateTimeOriginal ?? tags.CreateDate);
  return {
    width: head.autoOrient.width,
    height: head.autoOrient.height,
    format: head.format,
    space: head.space,
    depth: head.depth,
    pages: head.pages ?? 1,
    ...(taken ? { taken } : {}),
    gps: tags.latitude !== undefined || /GPSL(at|ong)itude/.test(head.xmpAsString ?? ''),
  };
}

type Tags = Readonly<Record<string, unknown>>;

/** Tags of the EXIF block; a broken block says nothing, and is left out of what is published in any case. */
async function exifOf({ exif, format }: Metadata, photo: string | Uint8Array): Promise<Tags> {
  // In a TIFF the tags are the file's own, and the image library gives no block of them.
  const block = format === 'tiff' ? photo : exif?.subarray(startOf(exif));
  if (block === undefined) return {};
  try {
    const options = { reviveValues: false, gps: true, ifd1: false, tiff: true, exif: true };
    return (await exifr.parse(block, options)) ?? {};
  } catch {
    return {};
  }
}

/** Where the tags start: after the mark that a JPEG puts before them (EXIF 2.32, 4.7.2). */
function startOf(exif: Buffer): number {
  return exif.toString('latin1', 0, 4) === 'Exif' ? 6 : 0;
}

/** `2025:03:08 14:05:00` (EXIF 2.32, DateTimeOriginal) as a day. */
function dayOf(value: unknown): Day | undefined {
  return typeof value === 'string' ? parseDay(value.slice(0, 10).replaceAll(':', '-')) : undefined;
}
