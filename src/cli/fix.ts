import { join } from 'node:path';
import { mendContent } from '../mend/mend-content.ts';
import { replaceFile } from '../mend/replace-file.ts';
import { contentDir } from '../site/folders.ts';
import { alone } from '../write/alone.ts';
import { describeMends, plural } from './print-problems.ts';

/** Mends what has one answer, shows each change, and says what could not be written. */
export async function fix({ dry }: { readonly dry: boolean }): Promise<string> {
  if (dry) return mend();
  const said = await alone(contentDir, 'check --fix', () => mend(write));
  return typeof said === 'string' ? said : `Nothing is mended: ${said.busy}\n`;
}

type Files = Awaited<ReturnType<typeof mendContent>>['files'];

async function mend(write?: (files: Files) => Promise<readonly string[]>): Promise<string> {
  const { mended, files } = await mendContent(contentDir, new Date());
  if (mended.length === 0) return 'Nothing that has only one answer.\n';
  const refused = (await write?.(files)) ?? [];
  const count = `${plural(mended.length, 'value')} in ${plural(files.size, 'file')}`;
  const said = write
    ? `Mended ${count}.`
    : `Would mend ${count}; nothing is written, so what follows names them, too.`;
  return [describeMends(mended, contentDir), ...refused, `${said}\n`].join('');
}

/** Writes each file, and says which could not be. */
async function write(files: Files): Promise<readonly string[]> {
  const refused: string[] = [];
  for (const [file, change] of files) {
    const wrong = await replaceFile(join(contentDir, file), change);
    if (wrong) refused.push(`${wrong}\n`);
  }
  return refused;
}
