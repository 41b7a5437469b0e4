import { existsSync } from 'node:fs';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import exifr from 'exifr';
import { drawJpeg } from '../demo/jpeg.ts';
import { MODEL } from '../demo/phone-exif.ts';
import { PICTURES, type Picture } from '../demo/pictures.ts';
import { contentDir, contentDirProblem } from '../site/folders.ts';
import { say } from './say.ts';
import { tellWrongUse } from './wrong-use.ts';

const HELP = `npm run demo:pictures [-- NAME.jpg ...]

Draws the demo's pictures into the photos/ folders of its two projects; with names, only those.
Leaves alone every file that it did not write itself.
Exit status: 0 all written, 1 a file was in the way or a project is missing, 2 wrong use.
`;

type Outcome = 'written' | 'kept' | 'no project';

/** Draws and writes. A photo of the same name that is not ours stays as it is. */
export async function main(args: readonly string[]): Promise<number> {
  const names = readNames(args);
  if (names === 'help') return say(HELP, 0);
  if (names === undefined) return say(HELP, 2);
  const noDir = contentDirProblem();
  if (noDir) return say(noDir, 2);

  const wanted = PICTURES.filter(({ file }) => names.length === 0 || names.includes(file));
  const outcomes: Outcome[] = [];
  for (const picture of wanted) outcomes.push(await writePicture(picture));
  const written = outcomes.filter((outcome) => outcome === 'written').length;
  return say(`${written} of ${wanted.length} pictures written.`, written === wanted.length ? 0 : 1);
}

/** The file names asked for, none of which may be unknown. */
function readNames(args: readonly string[]): readonly string[] | 'help' | undefined {
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: { help: { type: 'boolean', short: 'h' } },
    });
    if (values.help) return 'help';
    const known = positionals.every((name) => PICTURES.some(({ file }) => file === name));
    return known ? positionals : undefined;
  } catch (error) {
    return tellWrongUse(error);
  }
}

async function writePicture(picture: Picture): Promise<Outcome> {
  const project = join(contentDir, picture.project);
  const path = join(project, 'photos', picture.file);
  if (!existsSync(project)) return report(path, 'no project');
  if (existsSync(path) && !(await isOurs(path))) return report(path, 'kept');

  const jpeg = await drawJpeg(picture);
  await mkdir(join(project, 'photos'), { recursive: true });
  await writeFile(path, jpeg);
  return report(path, 'written');
}

/** Only a file with our invented camera model is ours to overwrite. */
async function isOurs(path: string): Promise<boolean> {
  try {
    const tags: { Model?: unknown } | undefined = await exifr.parse(await readFile(path), [
      'Model',
    ]);
    return tags?.Model === MODEL;
  } catch {
    return false;
  }
}

function report(path: string, outcome: Outcome): Outcome {
  if (outcome === 'kept') console.error(`${path} is not a picture of this script; left as it is.`);
  if (outcome === 'no project')
    console.error(`${path}: there is no such project folder; left out.`);
  return outcome;
}
