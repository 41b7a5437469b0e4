import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { SIZES, type SizeName, scaled } from './size.ts';
import { writeContent } from './write.ts';

const HELP = `npm run bench -- content M FOLDER [--share 0.5] [--seed 1]

Writes a made-up content folder of the size M or L into a new folder.
  --share  takes so much of the entries, rows and specs
`;

/** Writes what the bench measures, to look at or to profile. */
export async function contentCommand(args: readonly string[]): Promise<number> {
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        share: { type: 'string', default: '1' },
        seed: { type: 'string', default: '1' },
      },
    });
    const [name, folder] = positionals;
    if (name === undefined || folder === undefined || !Object.hasOwn(SIZES, name)) throw undefined;
    const size = scaled(SIZES[name as SizeName], Number(values.share));
    await writeContent(resolve(folder), size, Number(values.seed));
    console.log(`Written to ${folder}.`);
    return 0;
  } catch (error) {
    console.error(error === undefined ? HELP : (error as Error).message);
    return 2;
  }
}
