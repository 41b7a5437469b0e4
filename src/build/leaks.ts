import { createHash } from 'node:crypto';
import { readdir, readFile, stat } from 'node:fs/promises';
import { basename, join, relative } from 'node:path';
import sharp from 'sharp';
import { isCertainlyBare } from '../photo/bare-picture.ts';
import { eachOf } from '../photo/each.ts';

const PICTURE = /\.(avif|gif|heic|jpe?g|png|tiff?|webp)$/i;

/** Folders of the content whose files stay at home. */
const AT_HOME = /[\\/](photos|receipts)[\\/]/;

/**
 * Files of a built site that must not leave the house: a byte-for-byte copy of an original photo or a receipt under any name, a file
 * that holds a secret of marks or one of the private texts given, or a picture that still carries metadata. A last gate, since a
 * build tool can publish an original without being asked, and a builder can type a frame number into an entry.
 */
export async function findLeaks(
  site: string,
  contentDir: string,
  privateTexts: readonly string[] = [],
): Promise<string[]> {
  const originals = await originalsBySize(contentDir);
  // What is shorter stands somewhere by chance.
  const texts = privateTexts.filter(({ length }) => length > 4);
  const secrets = [...new Set(texts.flatMap(writings)), ...(await secretsIn(contentDir))];
  const leaks: string[] = [];
  await eachOf(
    await filesIn(site),
    { items: 8, weight: 8 },
    () => 1,
    async (file) => {
      const leaky =
        (await isCopy(file, originals)) ||
        (PICTURE.test(file) ? await hasMetadata(file) : await tells(file, secrets));
      if (leaky) leaks.push(relative(site, file));
    },
  );
  return leaks.sort();
}

/** A text as it may stand in a file: as it is, in a page, in a feed, in JSON. */
function writings(text: string): string[] {
  const inPage = text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
  return [
    text,
    inPage,
    ...['&quot;', '&#34;'].map((quote) => inPage.replaceAll('"', quote).replaceAll("'", '&#39;')),
    JSON.stringify(text).slice(1, -1),
  ];
}

/** Originals by their size in bytes: only a file of the same size can be a copy, so that thousands of photos need not be read. */
async function originalsBySize(contentDir: string): Promise<ReadonlyMap<number, string[]>> {
  const bySize = new Map<number, string[]>();
  for (const file of await filesIn(contentDir)) {
    if (!AT_HOME.test(relative(contentDir, file))) continue;
    const { size } = await stat(file);
    bySize.set(size, [...(bySize.get(size) ?? []), file]);
  }
  return bySize;
}

async function isCopy(file: string, originals: ReadonlyMap<number, string[]>): Promise<boolean> {
  const alike = originals.get((await stat(file)).size) ?? [];
  if (alike.length === 0) return false;
  const hash = await hashOf(file);
  for (const original of alike) if ((await hashOf(original)) === hash) return true;
  return false;
}

/** The secrets of marks: whatever has the length of one, also in a file that can't be read as one. */
async function secretsIn(contentDir: string): Promise<readonly string[]> {
  const files = (await filesIn(contentDir)).filter((file) => basename(file) === 'marks-secret.txt');
  const texts = await Promise.all(files.map((file) => readFile(file, 'utf8')));
  return texts.flatMap((text) => text.match(/[0-9a-f]{64}/g) ?? []);
}

async function tells(file: string, secrets: readonly string[]): Promise<boolean> {
  if (secrets.length === 0) return false;
  const bytes = await readFile(file);
  return secrets.some((secret) => bytes.includes(secret));
}

async function filesIn(folder: string): Promise<string[]> {
  const items = await readdir(folder, { recursive: true, withFileTypes: true });
  return items.filter((item) => item.isFile()).map((item) => join(item.parentPath, item.name));
}

async function hashOf(file: string): Promise<string> {
  return createHash('sha256')
    .update(await readFile(file))
    .digest('hex');
}

async function hasMetadata(file: string): Promise<boolean> {
  if (isCertainlyBare(file)) return false;
  const { exif, xmp, iptc, icc } = await sharp(file).metadata();
  return [exif, xmp, iptc, icc].some((block) => block !== undefined);
}
