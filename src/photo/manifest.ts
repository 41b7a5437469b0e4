import type { Day } from '../time/day.ts';

/** Formats that every published size is made in, the smaller one first. */
export const FORMATS = ['avif', 'webp'] as const;

export type Format = (typeof FORMATS)[number];

/** One published size: its file in each format. */
export interface PhotoSize {
  readonly width: number;
  readonly height: number;
  readonly files: Readonly<Record<Format, string>>;
}

/** A photo as it is published: derived sizes, the smallest first. */
export interface PublishedPhoto {
  readonly sizes: readonly PhotoSize[];
  /** Mean colour, `#rrggbb`, that stands in its place until it is there. */
  readonly colour: string;
  /** Day it was taken, from its record or from the file itself. */
  readonly taken: Day | undefined;
  /** SHA-256 of the whole original, in hexadecimal. */
  readonly sha256: string;
}

/** Published photos by `<project>/<file name of the original>`, and the halves of pairs by names of their own. */
export type PhotoManifest = Readonly<Record<string, PublishedPhoto>>;
