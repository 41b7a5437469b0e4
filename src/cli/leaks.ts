import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { basename, join, relative } from 'node:path';
import sharp from 'sharp';

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
  const originals = new Set<string>();
  // What is shorter stands somewhere in any picture by chance.
  const secrets = privateTexts.filter(({ length }) => length > 4);
  for (const file of await filesIn(contentDir)) {
    if (AT_HOME.test(relative(contentDir, file))) originals.add(hashOf(await readFile(file)));
    if (basename(file) === 'marks-secret.txt')
      secrets.push(...secretsIn(await readFile(file, 'utf8')));
  }

  const leaks: string[] = [];
  for (const file of await filesIn(site)) {
    const bytes = await readFile(file);
    const copied = originals.size > 0 && originals.has(hashOf(bytes));
    const told = secrets.some((secret) => bytes.includes(secret));
    if (copied || told || (PICTURE.test(file) && (await hasMetadata(file))))
      leaks.push(relative(site, file));
  }
  return leaks;
}

/** Whatever has the length of a secret, also in a file that can't be read as one. */
function secretsIn(text: string): readonly string[] {
  return text.match(/[0-9a-f]{64}/g) ?? [];
}

async function filesIn(folder: string): Promise<string[]> {
  const items = await readdir(folder, { recursive: true, withFileTypes: true });
  return items.filter((item) => item.isFile()).map((item) => join(item.parentPath, item.name));
}

function hashOf(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}

async function hasMetadata(file: string): Promise<boolean> {
  const { exif, xmp, iptc, icc } = await sharp(file).metadata();
  return [exif, xmp, iptc, icc].some((block) => block !== undefined);
}
