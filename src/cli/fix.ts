import { join } from 'node:path';
import { mendContent } from '../mend/mend-content.ts';
import { replaceFile } from '../mend/replace-file.ts';
import { contentDir } from '../site/folders.ts';
import { describeMends, plural } from './print-problems.ts';

/** Mends what has one answer, shows each change, and says what could not be written. */
export async function fix({ dry }: { readonly dry: boolean }): Promise<string> {
  const { mended, files } = await mendContent(contentDir, new Date());
  if (mended.length === 0) return 'Nothing that has only one answer.\n';
  const refused: string[] = [];
  for (const [file, change] of dry ? [] : files) {
    const wrong = await replaceFile(join(contentDir, file), change);
    if (wrong) refused.push(`${wrong}\n`);
  }
  const count = `${plural(mended.length, 'value')} in ${plural(files.size, 'file')}`;
  const said = dry ? `Would mend ${count}; nothing is written.` : `Mended ${count}.`;
  return [describeMends(mended, contentDir), ...refused, `${said}\n`].join('');
}
