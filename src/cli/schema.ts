import { join } from 'node:path';
import { editorSchemas } from '../model/editor.ts';
import { contentDir } from '../site/folders.ts';
import { writeWhole } from '../write/swap-in.ts';

/** Writes a JSON Schema for every kind of record to `content/.schema/`, for completion in an editor. */
export async function main(): Promise<number> {
  const folder = join(contentDir, '.schema');
  for (const [name, schema] of editorSchemas())
    await writeWhole(join(folder, name), `${JSON.stringify(schema, null, 2)}\n`);
  console.log(`Wrote ${editorSchemas().size} schemas to ${folder}.`);
  return 0;
}
