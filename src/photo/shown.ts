import { entryComponents } from '../model/components.ts';
import type { PhotoRecord } from '../model/kinds.ts';
import type { Point } from '../model/photo-fields.ts';

/** A photo that is published. */
export interface ShownPhoto {
  /** `<project>/<file name>`. */
  readonly key: string;
  /** Path inside the content folder. */
  readonly file: string;
  readonly record: PhotoRecord | undefined;
  /** Places on it that are pointed at, and by what. */
  readonly places: readonly { readonly what: string; readonly at: Point }[];
}

/** A component as an entry uses it. */
interface Used {
  readonly name: string;
  readonly props: readonly { readonly name: string; readonly literal?: unknown }[];
}

/** A finding as far as it shows on a photo. */
interface Found {
  readonly id: string;
  readonly photo?: string | undefined;
  readonly at?: readonly string[] | undefined;
}

/** What of a project says which photos it shows. */
export interface Named {
  readonly id: string;
  readonly entries: readonly { readonly components: readonly Used[] }[];
  readonly readings: readonly { readonly photo?: string | undefined }[];
  readonly findings: readonly Found[];
  readonly photos: readonly string[];
  readonly photoRecords: readonly PhotoRecord[];
}

/** Photos of a project that an entry shows, a reading or a finding names, or a record describes, each once; only files that are there. */
export function shownPhotos(project: Named): ShownPhoto[] {
  const { id, entries, readings, findings, photos, photoRecords } = project;
  const names = new Set<unknown>([
    ...entries.flatMap(({ components }) => components.flatMap(photosOf)),
    ...[...readings, ...findings].map(({ photo }) => photo),
    ...photoRecords.map(({ file }) => file),
  ]);
  const records = new Map(photoRecords.map((record) => [record.file, record]));
  return photos
    .filter((name) => names.has(name))
    .map((name) => ({
      key: `${id}/${name}`,
      file: `${id}/photos/${name}`,
      record: records.get(name),
      places: [
        ...(records.get(name)?.callouts ?? []).flatMap(({ at, to }, index) =>
          [at, ...(to ? [to] : [])].map((place) => ({ what: `callout ${index + 1}`, at: place })),
        ),
        ...placedFindings(findings, name).map((found) => ({
          what: `finding "${found.id}"`,
          at: found.at,
        })),
      ],
    }));
}

/** Files of photos that a component in an entry shows. */
export function photosOf({ name, props }: Used): readonly unknown[] {
  const rules = Object.hasOwn(entryComponents, name) ? entryComponents[name] : undefined;
  return props.filter((prop) => rules?.[prop.name]?.photo).map(({ literal }) => literal);
}

/** Findings that say where on a photo they are. */
export function placedFindings<Finding extends Found>(
  findings: readonly Finding[],
  photo: string,
): (Omit<Finding, 'at'> & { readonly at: Point })[] {
  return findings.flatMap((finding) => {
    const [across = Number.NaN, down = Number.NaN] = (finding.at ?? []).map(Number);
    const lies = across >= 0 && across <= 1 && down >= 0 && down <= 1;
    return finding.photo === photo && lies ? [{ ...finding, at: [across, down] as const }] : [];
  });
}
