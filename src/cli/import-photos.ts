import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { type DatedEntry, entryFor, photoRecord } from '../import/photo-entry.ts';
import { type PhotoOutcome, photoOutcomes } from '../import/photo-folder.ts';
import { type ReadContent, type ReadProject, readContent } from '../read/content.ts';
import { contentDir } from '../site/folders.ts';
import { keepFile } from '../write/keep-file.ts';
import type { ImportArguments } from './import-arguments.ts';
import { noProject } from './no-project.ts';
import { plural } from './print-problems.ts';
import { say } from './say.ts';

type Added = Extract<PhotoOutcome, { is: 'added' }>;

/** Shows which entry each picture of a folder belongs to, and copies those that are new when asked to. */
export async function importPhotos({ file, project: id, write }: ImportArguments): Promise<number> {
  const project = projectOf(await readContent(contentDir), id);
  if (typeof project === 'string') return say(project, 2);
  const entries = project.entries.map(({ slug, value }) => ({ slug, date: value.date }));
  const outcomes = await photoOutcomes(file, join(contentDir, project.id, 'photos'));
  const added = outcomes.filter((outcome) => outcome.is === 'added');
  const names = new Map<string, string>();
  if (write)
    for (const { name } of added) {
      const bytes = await readFile(join(file, name));
      names.set(name, await keepFile(contentDir, project.id, 'photos', name, bytes));
    }

  const width = Math.max(4, ...outcomes.map(({ name }) => name.length));
  for (const outcome of outcomes)
    console.log(
      `${outcome.name.padEnd(width)}  ${word(outcome).padEnd(7)}  ${told(outcome, entries, names)}`,
    );
  const count = (is: PhotoOutcome['is']) => outcomes.filter((one) => one.is === is).length;
  const adds = write ? 'added' : 'to add';
  console.log(
    `\n${plural(outcomes.length, 'file')} = ${added.length} ${adds} + ${count('known')} known + ${count('refused')} refused`,
  );
  if (added.length > 0) console.log(write ? afterwards(added, names, project) : NOT_YET);
  return count('refused') > 0 ? 1 : 0;
}

function word({ is }: PhotoOutcome): string {
  return is === 'added' ? 'add' : is;
}

const NOT_YET = 'Nothing is copied yet: add --write.';

function told(
  outcome: PhotoOutcome,
  entries: readonly DatedEntry[],
  names: ReadonlyMap<string, string>,
): string {
  if (outcome.is === 'known') return `as ${outcome.as}`;
  if (outcome.is === 'refused') return outcome.why;
  const entry = entryFor(outcome.taken, entries);
  const day = outcome.taken ?? 'the file names no day';
  const none = outcome.taken ? 'no entry since: for the next one you write' : 'no entry';
  const as = names.get(outcome.name);
  return [
    `${day} → ${entry ? entry.slug : none}`,
    ...(outcome.gps ? ['says where it was taken'] : []),
    ...(as ? [`as ${as}`] : []),
  ].join(' · ');
}

/** A record publishes its photo, so records are shown and never written. */
function afterwards(
  added: readonly Added[],
  names: ReadonlyMap<string, string>,
  project: ReadProject,
): string {
  const records = added.map(({ name }) => photoRecord(names.get(name) ?? name));
  return [
    '',
    'Look at each picture for what must be hidden first: plates, faces, addresses, numbers. A picture is published as soon as an entry,',
    `a row or a record names it. Then put what you keep of this into ${project.id}/photos.yaml, with "hide:" or "nothing-to-hide: true":`,
    '',
    ...records,
  ].join('\n');
}

function projectOf({ projects }: ReadContent, id: string | undefined): ReadProject | string {
  const ids = projects.map((project) => project.id);
  const [only] = projects;
  if (id === undefined)
    return only && projects.length === 1
      ? only
      : `Say which project it is for: --project ${ids.join(' | ')}`;
  const found = projects.find((project) => project.id === id);
  return found ?? noProject(id ?? '', ids);
}
