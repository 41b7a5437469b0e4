import { join } from 'node:path';
import { editorSchemas } from '../model/editor.ts';
import { contentDir } from '../site/folders.ts';
import { alone } from '../write/alone.ts';
import { writeWhole } from '../write/swap-in.ts';
import { say } from './say.ts';
import { noArguments } from './wrong-use.ts';

/** Writes a JSON Schema for every kind of record to `content/.schema/`, for completion in an editor. */
export async function main(args: readonly string[] = []): Promise<number> {
  const wrong = noArguments('run schema', args);
  if (wrong) return wrong;
  const folder = join(contentDir, '.schema');
  const done = await alone(contentDir, 'schema', async () => {
    for (const [name, schema] of editorSchemas())
      await writeWhole(join(folder, name), `${JSON.stringify(schema, null, 2)}\n`);
  });
  if (done) return say(done.busy, 1);
  console.log(`Wrote ${editorSchemas().size} schemas to ${folder}.`);
  return 0;
}
