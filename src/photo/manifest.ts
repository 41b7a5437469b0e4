/** One derived picture. */
export interface PhotoSize {
  readonly file: string;
  readonly width: number;
  readonly height: number;
}

/** A photo as it is published: derived sizes, the smallest first. */
export interface PublishedPhoto {
  readonly sizes: readonly PhotoSize[];
}

/** Published photos by `<project>/<file name of the original>`. */
export type PhotoManifest = Readonly<Record<string, PublishedPhoto>>;
