import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { parse as parseCsv } from 'csv-parse/sync';
import { parse as parseYaml } from 'yaml';

/** One file of the demo as a general reader of YAML or CSV gives it, with the kind that its name says. */
export interface DemoFile {
  readonly path: string;
  readonly kind: string;
  readonly content: unknown;
}

/** Every record file of the demo, and the front matter of every entry. */
export async function demoFiles(): Promise<DemoFile[]> {
  const items = await readdir('content', { recursive: true, withFileTypes: true });
  const paths = items
    .filter((item) => item.isFile() && /\.(yaml|csv|mdx)$/.test(item.name))
    .map((item) => join(item.parentPath, item.name));
  return Promise.all(paths.sort().map(readDemoFile));
}

async function readDemoFile(path: string): Promise<DemoFile> {
  const text = await readFile(path, 'utf8');
  const kind = path.replace(/^.*[\\/]/, '').replace(/[-.].*$/, '');
  if (path.endsWith('.csv')) return { path, kind, content: rowsOf(text) };
  if (path.endsWith('.yaml')) return { path, kind, content: parseYaml(text) };
  return { path, kind: 'entry', content: parseYaml(text.split(/^---$/m)[1] ?? '') };
}

/** Rows with their empty cells left out: an empty cell says nothing. */
function rowsOf(text: string): Record<string, string>[] {
  const rows: Record<string, string>[] = parseCsv(text, { columns: true });
  return rows.map((row) => Object.fromEntries(Object.entries(row).filter(([, cell]) => cell)));
}
