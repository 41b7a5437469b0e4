import { mkdir, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { editorSchemas } from '../model/editor.ts';
import { contentDir } from '../site/folders.ts';

/** Writes a JSON Schema for every kind of record to `content/.schema/`, for completion in an editor. */
export async function main(): Promise<number> {
  const folder = join(contentDir, '.schema');
  await mkdir(folder, { recursive: true });
  for (const [name, schema] of editorSchemas()) {
    const fresh = join(folder, `${name}.${process.pid}.new`);
    await writeFile(fresh, `${JSON.stringify(schema, null, 2)}\n`);
    await rename(fresh, join(folder, name));
  }
  console.log(`Wrote ${editorSchemas().size} schemas to ${folder}.`);
  return 0;
}
