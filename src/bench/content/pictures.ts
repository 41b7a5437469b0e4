import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { PICTURES, type Picture } from '../../demo/pictures.ts';
import { sheet } from '../../demo/sheet.ts';
import { dayAt } from './span.ts';
import { yamlText } from './yaml-text.ts';

/** Draws photos into the folder of a project, each with a title and a day of its own, and writes what is known of them; gives their names. */
export async function writePictures(
  folder: string,
  { count, first }: { count: number; first: number },
): Promise<string[]> {
  await mkdir(join(folder, 'photos'), { recursive: true });
  const names: string[] = [];
  for (let index = 0; index < count; index++) {
    const { scene } = PICTURES[(first + index) % PICTURES.length] as Picture;
    const block = { machine: 'Bench engine', day: dayAt((index + 1) / (count + 2)) };
    const svg = sheet(scene(), { ...block, title: `Sheet ${first + index + 1}` });
    const name = `sheet-${first + index + 1}.jpg`;
    await sharp(Buffer.from(svg))
      .jpeg({ quality: 70 })
      .toFile(join(folder, 'photos', name));
    names.push(name);
  }
  const records = names.map((file, index) => ({
    ...{ id: `sheet-${first + index + 1}`, file, alt: `Drawn sheet ${first + index + 1}` },
    'nothing-to-hide': true,
  }));
  await writeFile(join(folder, 'photos.yaml'), yamlText(records));
  return names;
}
