import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import sharp from 'sharp';
import { parseDocument, YAMLSeq } from 'yaml';

/** Fields that are never published, by the kind of file they stand in. Written out here, not taken from the schemas that are tested. */
export const PRIVATE_FIELDS: Readonly<Record<string, readonly string[]>> = {
  project: ['machine.identity', 'identity.marks.value'],
  instruments: ['serial'],
  costs: ['supplier', 'receipt'],
  orders: ['supplier'],
  searches: ['place'],
  preparations: ['place'],
};

/** Kinds whose records may have private fields only where a field of theirs is true: what was done here has no place. */
const ONLY_WHERE: Readonly<Record<string, string>> = { preparations: 'out' };

/** How every planted secret looks, wherever it turns up: letters, digits and hyphens pass any escaping unchanged. */
export const PLANTED = /undisclosed-[a-z0-9-]+/gi;

/** Where the planted photos say they were taken, as an EXIF reader gives it. */
export const PLANTED_PLACE = { latitude: 54.31415, longitude: -2.27182 };

/**
 * Puts a secret into every private field of every record of a content folder, whether it had a value or not, and into the metadata of
 * every photo. Returns the secrets.
 */
export async function plantSecrets(contentDir: string): Promise<string[]> {
  const planted: string[] = [];
  for (const item of await readdir(contentDir, { recursive: true, withFileTypes: true })) {
    const file = join(item.parentPath, item.name);
    const kind = item.name.replace(/[-.].*$/, '');
    const fields = PRIVATE_FIELDS[kind];
    if (item.isFile() && /\.jpe?g$/i.test(item.name)) planted.push(...(await plantPhoto(file)));
    if (item.isFile() && /\.(csv|yaml)$/.test(item.name) && fields)
      planted.push(...(await plantFile(file, fields, ONLY_WHERE[kind])));
  }
  return planted;
}

async function plantFile(
  file: string,
  fields: readonly string[],
  needs: string | undefined,
): Promise<string[]> {
  const text = await readFile(file, 'utf8');
  const planted: string[] = [];
  const secret = (field: string, record: number) => {
    const words = [file.replace(/^.*\/(?=[^/]+\/)/, ''), field, String(record)].join('-');
    planted.push(`undisclosed-${words.toLowerCase().replace(/[^a-z0-9]+/g, '-')}`);
    return planted.at(-1) ?? '';
  };
  await writeFile(
    file,
    file.endsWith('.csv') ? inCsv(text, fields, secret) : inYaml(text, fields, { secret, needs }),
  );
  return planted;
}

type Secret = (field: string, record: number) => string;

function inCsv(text: string, fields: readonly string[], secret: Secret): string {
  const rows: Record<string, string>[] = parse(text, { columns: true, bom: true });
  const filled = rows.map((row, index) => ({
    ...row,
    ...Object.fromEntries(fields.map((field) => [field, secret(field, index)])),
  }));
  const lines = [Object.keys(filled[0] ?? {}), ...filled.map((row) => Object.values(row))];
  return lines
    .map((cells) => `${cells.map((cell) => `"${cell.replaceAll('"', '""')}"`).join(',')}\n`)
    .join('');
}

function inYaml(
  text: string,
  fields: readonly string[],
  { secret, needs }: { readonly secret: Secret; readonly needs: string | undefined },
): string {
  const document = parseDocument(text);
  const count = document.contents instanceof YAMLSeq ? document.contents.items.length : undefined;
  for (const field of fields) {
    const path = field.split('.');
    if (count === undefined)
      for (const [index, place] of placesIn(document, path).entries())
        document.setIn(place, secret(field, index));
    for (let index = 0; index < (count ?? 0); index++)
      if (needs === undefined || document.getIn([index, needs]) === true)
        document.setIn([index, ...path], secret(field, index));
  }
  return String(document);
}

/** Where a field stands: once, or in every item where the middle of its path is a list. */
function placesIn(
  document: ReturnType<typeof parseDocument>,
  [first, middle, last]: readonly string[],
): (string | number)[][] {
  const list = middle === undefined ? undefined : document.getIn([first, middle]);
  if (!(list instanceof YAMLSeq))
    return [[first, middle, last].filter((step) => step !== undefined)];
  return list.items.map((_, index) => [first, middle, index, last] as (string | number)[]);
}

async function plantPhoto(file: string): Promise<string[]> {
  const name = `undisclosed-photo-${file
    .replace(/^.*\//, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')}`;
  const picture = await sharp(await readFile(file))
    .withExifMerge({
      IFD0: { Artist: `${name}-artist`, ImageDescription: `${name}-description` },
      IFD3: {
        GPSLatitudeRef: 'N',
        GPSLatitude: '54/1 18/1 5094/100',
        GPSLongitudeRef: 'W',
        GPSLongitude: '2/1 16/1 1855/100',
      },
    })
    .withXmp(
      `<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" dc:source="${name}-xmp"/></rdf:RDF></x:xmpmeta>`,
    )
    .withIccProfile('p3')
    .toBuffer();
  await writeFile(file, picture);
  return ['artist', 'description', 'xmp'].map((field) => `${name}-${field}`);
}
