import type { PhotoRecord } from '../model/kinds.ts';

/** A photo that is published. */
export interface ShownPhoto {
  /** `<project>/<file name>`. */
  readonly key: string;
  /** Path inside the content folder. */
  readonly file: string;
  readonly record: PhotoRecord | undefined;
}

interface Named {
  readonly id: string;
  readonly entries: readonly {
    readonly components: readonly {
      readonly name: string;
      readonly props: readonly { readonly name: string; readonly literal?: unknown }[];
    }[];
  }[];
  readonly readings: readonly { readonly photo?: string | undefined }[];
  readonly photos: readonly string[];
  readonly photoRecords: readonly PhotoRecord[];
}

/** Photos of a project that an entry shows, a reading names or a record describes, each once; only files that are there. */
export function shownPhotos(project: Named): ShownPhoto[] {
  const { id, entries, readings, photos, photoRecords } = project;
  const inEntries = entries.flatMap(({ components }) =>
    components
      .filter(({ name }) => name === 'Photo' || name === 'PhotoPair')
      .flatMap(({ props }) => props.map(({ literal }) => literal)),
  );
  const names = new Set<unknown>([
    ...inEntries,
    ...readings.map(({ photo }) => photo),
    ...photoRecords.map(({ file }) => file),
  ]);
  const records = new Map(photoRecords.map((record) => [record.file, record]));
  return photos
    .filter((name) => names.has(name))
    .map((name) => ({
      key: `${id}/${name}`,
      file: `${id}/photos/${name}`,
      record: records.get(name),
    }));
}
