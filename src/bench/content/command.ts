import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { sizeNamed } from './size.ts';
import { writeContent } from './write.ts';

const HELP = `npm run bench -- content M FOLDER [--seed 1]

Writes a made-up content folder of the size M or L, or of a part of one like M/8, into a new folder.
`;

/** Writes what the bench measures, to look at or to profile. */
export async function contentCommand(args: readonly string[]): Promise<number> {
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        seed: { type: 'string', default: '1' },
      },
    });
    const [name = '', folder] = positionals;
    const size = sizeNamed(name);
    if (size === undefined || folder === undefined) {
      console.error(HELP);
      return 2;
    }
    await writeContent(resolve(folder), size, Number(values.seed));
    console.log(`Written to ${folder}.`);
    return 0;
  } catch (error) {
    console.error((error as Error).message);
    return 2;
  }
}
