import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import { isKept } from '../publish/manifest.ts';

/** A file of a built site. */
export interface PublishedFile {
  readonly hash: string;
  readonly bytes: number;
  /** Whether its address is kept: it is no part of another page, and no page that asks not to be listed. */
  readonly kept: boolean;
}

/** Every file of a built site by its path in it, with `/` between names. */
export async function publishedFiles(site: string): Promise<ReadonlyMap<string, PublishedFile>> {
  const items = await readdir(site, { recursive: true, withFileTypes: true });
  const files = new Map<string, PublishedFile>();
  for (const item of items) {
    if (!item.isFile()) continue;
    const file = join(item.parentPath, item.name);
    const path = relative(site, file).replaceAll(sep, '/');
    const content = await readFile(file);
    const hash = createHash('sha256').update(content).digest('hex');
    const kept = isKept(path) && !isUnlisted(path, content);
    files.set(path, { hash, bytes: content.length, kept });
  }
  return files;
}

/** A page that search engines may not list, unless it leads on to another: that one has been listed before. */
function isUnlisted(path: string, content: Buffer): boolean {
  if (!path.endsWith('.html')) return false;
  const head = content.subarray(0, content.indexOf('</head>')).toString('utf8');
  return /<meta name="robots" content="noindex"/.test(head) && !/http-equiv="refresh"/.test(head);
}
