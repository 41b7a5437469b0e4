import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';

/** Writes a content folder of one invented project around photos that lie in `<folder>/bench/photos`. */
export async function writePhotoProject(folder: string, names: readonly string[]): Promise<void> {
  const files = {
    'site.yaml': 'title: Bench\naddress: https://bench.example/\nlanguage: en-GB\nbuilder: Bench\n',
    'bench/project.yaml': `name: Bench
summary: Photos to be measured.
machine: { maker: Invented, model: One, year: 1950, kind: press }
currency: EUR
timeZone: UTC
work: [fit]
people: [{ id: one }]
`,
    'bench/photos.yaml': names
      .map((name, index) => `- { id: p${index}, file: ${name}, nothing-to-hide: true }\n`)
      .join(''),
  };
  for (const [file, text] of Object.entries(files)) {
    await mkdir(join(folder, 'bench'), { recursive: true });
    await writeFile(join(folder, file), text);
  }
}
