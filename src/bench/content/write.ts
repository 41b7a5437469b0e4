import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { chanceOf } from './chance.ts';
import { definitionFiles, SITE, systemsOf } from './definitions.ts';
import { entryFiles } from './entries.ts';
import { ledgerRows } from './ledger.ts';
import { writePictures } from './pictures.ts';
import { readingRows, sessionsOf } from './sessions.ts';
import { rowCounts, type Size } from './size.ts';
import { dayAt } from './span.ts';
import { tableText } from './table-file.ts';

/** Writes a made-up content folder; the same size and seed give the same bytes. */
export async function writeContent(folder: string, size: Size, seed = 1): Promise<void> {
  await mkdir(folder, { recursive: true });
  await writeFile(join(folder, 'site.yaml'), SITE);
  for (let number = 1; number <= size.projects; number++)
    await writeProject(join(folder, projectId(number)), { size, seed, number });
}

/** Folder of one of the made-up projects, counted from 1. */
export const projectId = (number: number): string => `bench-engine-${number}`;

async function writeProject(
  folder: string,
  { size, seed, number }: { size: Size; seed: number; number: number },
): Promise<void> {
  const chance = chanceOf(seed * 1000 + number);
  const systems = systemsOf(size);
  const counts = rowCounts(size);
  const sessions = sessionsOf(systems, counts.readings);
  const rows = {
    ...ledgerRows(counts, systems, chance),
    readings: readingRows(sessions, counts.readings, chance),
  };
  await mkdir(join(folder, 'ledger'), { recursive: true });
  await mkdir(join(folder, 'entries'));
  for (const [file, text] of Object.entries(definitionFiles(number, systems, chance)))
    await writeFile(join(folder, file), text);
  for (const [kind, list] of Object.entries(rows))
    await writeFile(join(folder, 'ledger', `${kind}.csv`), tableText(list));
  const photos = await writePictures(folder, {
    count: size.photos,
    first: (number - 1) * size.photos,
  });
  const dates = Array.from({ length: size.entries }, (_, index) =>
    dayAt((index + 1) / (size.entries + 1)),
  );
  for (const { name, text } of entryFiles(dates, { sessions, systems, rows, photos }, chance))
    await writeFile(join(folder, 'entries', name), text);
}
