import type { Entry, Project } from '../book/types.ts';
import { stillStands } from '../ledger/standing.ts';
import type { Finding, PhotoRecord, Reading } from '../model/kinds.ts';
import { photosOf, shownPhotos } from '../photo/shown.ts';
import type { UsedComponent } from '../read/mdx.ts';
import { earliestDay } from '../time/day.ts';

/** A photo that is published, and all that is said of it. */
export interface PhotoPage {
  /** Its name in addresses: the id of its record, or its file name in plain letters. */
  readonly name: string;
  readonly title: string;
  readonly file: string;
  /** What it is listed under among the published photos. */
  readonly key: string;
  readonly record: PhotoRecord | undefined;
  readonly alt: string;
  readonly caption: string | undefined;
  readonly phase: string | undefined;
  readonly parts: readonly string[];
  readonly entries: readonly Entry[];
  readonly readings: readonly Reading[];
  readonly findings: readonly Finding[];
}

const lists = new WeakMap<Project, readonly PhotoPage[]>();

/** The photos of a project in the order they were taken, as far as that is written down, or first shown. */
export function photoList(project: Project): readonly PhotoPage[] {
  const known = lists.get(project) ?? listPhotos(project);
  lists.set(project, known);
  return known;
}

/** The page of a photo, by its file. */
export function photoPage(project: Project, file: string): PhotoPage | undefined {
  return photoList(project).find((photo) => photo.file === file);
}

function listPhotos(project: Project): PhotoPage[] {
  const readings = project.readings.map(({ reading }) => reading);
  const taken = new Set<string>();
  return shownPhotos({ ...project, readings })
    .map(({ key, file, record }) => {
      const name = file.slice(`${project.id}/photos/`.length);
      return { ...about(name, record, project, readings), key };
    })
    .sort((a, b) => (dayOf(a) < dayOf(b) ? -1 : Number(dayOf(a) > dayOf(b))))
    .map((photo) => {
      const name = freeName(photo.record?.id ?? plainName(photo.file), taken);
      taken.add(name);
      return { ...photo, name, title: titleOf(name) };
    });
}

function about(
  file: string,
  record: PhotoRecord | undefined,
  project: Project,
  allReadings: readonly Reading[],
) {
  const entries = project.entries.filter(({ components }) =>
    components.some((one) => shows(one, file)),
  );
  const findings = project.findings.filter((row) => row.photo === file && stillStands(row));
  const shown = entries[0]?.components.find((one) => shows(one, file));
  const parts = [
    ...(record?.parts ?? []),
    ...(record?.callouts ?? []).flatMap(({ part }) => part ?? []),
    ...findings.map(({ part }) => part),
  ];
  return {
    file,
    record,
    alt: record?.alt ?? wordsAt(shown, file, 'alt') ?? '',
    caption: record?.caption ?? wordsAt(shown, file, 'caption'),
    phase: record?.phase ?? entries[0]?.phase,
    parts: [...new Set(parts)],
    entries,
    readings: allReadings.filter(({ photo }) => photo === file),
    findings,
  };
}

function shows(component: UsedComponent, file: string): boolean {
  return photosOf(component).includes(file);
}

/** What an entry says of a photo: in a pair, each has words of its own. */
function wordsAt(
  component: UsedComponent | undefined,
  file: string,
  words: string,
): string | undefined {
  const prop = (wanted: string) => component?.props.find(({ name }) => name === wanted)?.literal;
  const named = component?.props.find(({ literal }) => literal === file)?.name;
  const found = prop(words === 'alt' && named !== 'file' ? `${named}-alt` : words);
  return typeof found === 'string' ? found : undefined;
}

/** The day that a photo is listed under; one that nothing dates comes last. */
function dayOf({ record, entries, readings, findings }: Omit<PhotoPage, 'name' | 'title'>): string {
  const dated = [...entries, ...readings, ...findings].map(({ date }) => date);
  return record?.taken ?? earliestDay(dated) ?? '9999';
}

function plainName(file: string): string {
  const plain = file
    .replace(/\.\w+$/, '')
    .normalize('NFD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-');
  return plain.replace(/^-|-$/g, '') || 'photo';
}

function freeName(wanted: string, taken: ReadonlySet<string>): string {
  let name = wanted;
  for (let count = 2; taken.has(name); count++) name = `${wanted}-${count}`;
  return name;
}

/** `three-quarter-open` → `Three quarter open`. */
function titleOf(name: string): string {
  const words = name.replaceAll('-', ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}
