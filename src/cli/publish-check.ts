import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { openBook } from '../book/open.ts';
import { projectsBehind } from '../build/built-from.ts';
import { findLeaks } from '../build/leaks.ts';
import { privateNumbers } from '../dossier/identity.ts';
import { movedLines, PUBLISHED } from '../publish/address-problems.ts';
import {
  addressOfFile,
  compareManifests,
  type Manifest,
  parseManifest,
  writeManifest,
} from '../publish/manifest.ts';
import { contentDir, contentDirProblem, siteDir } from '../site/folders.ts';
import { alone } from '../write/alone.ts';
import { PLACEHOLDER } from '../write/blank-project.ts';
import { writeWhole } from '../write/swap-in.ts';
import { pagesInside, readKept } from './address-check.ts';
import { plural } from './print-problems.ts';
import { type PublishedFile, publishedFiles } from './published-files.ts';
import { say } from './say.ts';
import { tellWrongUse } from './wrong-use.ts';

const HELP = `npm run publish:check [-- --keep]

Compares the built site with the one published before it: new, changed and vanished addresses, what is private, sizes.
--keep writes published.txt into the content folder: run it once the site is on its host.
Exit status: 0 fine, 1 an address vanished that site.yaml does not say moved, or something is private, 2 wrong use.
`;

/** Says what publishing the built site would change, and refuses what readers would miss or must not see. */
export async function main(args: readonly string[]): Promise<number> {
  const keep = readKeep(args);
  if (keep === undefined) return say(HELP, 2);
  const noDir = contentDirProblem();
  if (noDir) return say(noDir, 2);
  if (!existsSync(siteDir)) return say('There is no built site. Run "npm run build" first.', 2);

  const text = await readKept(contentDir);
  const before = parseManifest(text ?? '');
  if ('line' in before)
    return say(`${PUBLISHED}:${before.line}: this is no line of a manifest. Restore the file.`, 2);
  const files = await publishedFiles(siteDir);
  const now = manifestOf(files);
  const difference = compareManifests(before, now);
  const book = await openBook(contentDir, { now: new Date() });
  const behind = await projectsBehind(book.projects.map(({ id }) => id));
  if (behind.length > 0)
    return say(
      `The site was not built from the content as it is now: ${behind.join(', ')}. Run "npm run build" first.`,
      1,
    );
  if (keep && book.site?.address === PLACEHOLDER)
    return say(
      `site.yaml still has the address ${PLACEHOLDER}. Write the one that the site has, and build it again.`,
      1,
    );
  const led = new Set((book.site?.moved ?? []).map(({ from }) => from));
  const gone = difference.vanished.map(addressOfFile).filter((address) => !led.has(address));
  const leaks = await findLeaks(siteDir, contentDir, privateNumbers(book.projects));

  if (text === undefined) console.log('Nothing was kept before: every address is new.');
  list('new', difference.added.map(sized(files)));
  list('changed', difference.changed.map(sized(files)));
  const pages = pagesInside(book);
  list(
    'vanished',
    gone.flatMap((address) => [address, ...hint(address, pages)]),
    gone.length,
  );
  list('private', leaks);
  console.log(sizeOf(files));
  if (gone.length > 0 || leaks.length > 0) return 1;
  if (!keep) return 0;
  const busy = await alone(contentDir, 'publish:check', () =>
    writeWhole(join(contentDir, PUBLISHED), writeManifest(now)),
  );
  if (busy) return say(`${busy.busy}\nNothing was kept.`, 1);
  console.log(`Kept ${plural(now.size, 'address', 'addresses')} in ${PUBLISHED}.`);
  return 0;
}

function manifestOf(files: ReadonlyMap<string, PublishedFile>): Manifest {
  return new Map([...files].filter(([, { kept }]) => kept).map(([path, { hash }]) => [path, hash]));
}

/** What to do about an address that is gone, each line set in. */
function hint(address: string, pages: ReadonlySet<string>): readonly string[] {
  const fix = pages.has(address)
    ? 'the content makes it: run "npm run build" again'
    : movedLines(address, pages);
  return `→ ${fix}`.split('\n').map((line) => `  ${line}`);
}

function list(title: string, lines: readonly string[], count: number = lines.length): void {
  console.log(`${count} ${title}`);
  for (const line of lines) console.log(`  ${line}`);
}

function sized(files: ReadonlyMap<string, PublishedFile>): (path: string) => string {
  return (path) => `${addressOfFile(path) || './'}  ${kilobytes(files.get(path)?.bytes ?? 0)}`;
}

function sizeOf(files: ReadonlyMap<string, PublishedFile>): string {
  const all = [...files].sort(([, a], [, b]) => b.bytes - a.bytes);
  const bytes = all.reduce((sum, [, file]) => sum + file.bytes, 0);
  const pages = all.filter(([path]) => path.endsWith('.html'));
  const [[largest = '', file] = []] = pages;
  const most = file
    ? `; the largest page is ${addressOfFile(largest) || './'}, ${kilobytes(file.bytes)}`
    : '';
  return `${plural(all.length, 'file')}, ${kilobytes(bytes)}, ${plural(pages.length, 'page')}${most}`;
}

function kilobytes(bytes: number): string {
  return `${(bytes / 1000).toFixed(1)} kB`;
}

function readKeep(args: readonly string[]): boolean | undefined {
  try {
    const { values } = parseArgs({
      args: [...args],
      options: { keep: { type: 'boolean', default: false } },
    });
    return values.keep;
  } catch (error) {
    return tellWrongUse(error);
  }
}
