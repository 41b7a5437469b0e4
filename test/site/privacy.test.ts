import { readFileSync } from 'node:fs';
import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import exifr from 'exifr';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { z } from 'zod';
import { factsOf } from '../../src/model/facts.ts';
import { allKinds } from '../../src/model/kinds.ts';
import { filesOf } from './pages.ts';
import { PLANTED, PLANTED_PLACE, PRIVATE_FIELDS } from './plant.ts';

const site = inject('site');
const photos = filesOf(site.content).filter((file) => /\.jpe?g$/i.test(file));

/** Secrets of the content that a file of a folder holds: planted words, places in degrees, or a piece of an original photo. */
function secretsIn(folder: string): string[] {
  const pieces = photos.map((file) => ({ file, pieces: piecesOf(join(site.content, file)) }));
  const places = Object.values(PLANTED_PLACE).map((degrees) =>
    String(Math.abs(degrees)).slice(0, 6),
  );
  return filesOf(folder).flatMap((file) => {
    const bytes = readFileSync(join(folder, file));
    const text = `${file}\n${bytes.toString('latin1')}`;
    return [
      ...(text.match(PLANTED) ?? []),
      ...places.filter((place) => text.includes(place)),
      ...pieces
        .filter((photo) => photo.pieces.some((piece) => bytes.includes(piece)))
        .map((photo) => photo.file),
    ].map((secret) => `${file}: ${secret}`);
  });
}

/** Bytes from the start, the middle and the end of a picture's data: a cut or wrapped copy of it still holds one of them. */
function piecesOf(file: string): Buffer[] {
  const bytes = readFileSync(file);
  return [0.2, 0.5, 0.9].map((share) => {
    const start = Math.floor(bytes.length * share);
    return bytes.subarray(start, start + 64);
  });
}

test('no file of the site holds a private field, where a photo was taken, or a piece of an original photo', () => {
  expect(secretsIn(site.folder)).toEqual([]);
});

describe('what was planted', () => {
  test('covers every field that a schema calls private', () => {
    const privateIn = (schema: z.ZodType, path: string): string[] => {
      if (schema instanceof z.ZodOptional || schema instanceof z.ZodDefault)
        return privateIn(schema.unwrap() as z.ZodType, path);
      if (schema instanceof z.ZodArray) return privateIn(schema.element as z.ZodType, path);
      const inner = schema;
      const own = factsOf(schema).private ? [path] : [];
      if (!(inner instanceof z.ZodObject)) return own;
      const fields = Object.entries(inner.shape) as [string, z.ZodType][];
      return [
        ...own,
        ...fields.flatMap(([name, field]) => privateIn(field, path ? `${path}.${name}` : name)),
      ];
    };
    const called = Object.entries(allKinds)
      .map(([kind, schema]) => [kind, privateIn(schema, '')] as const)
      .filter(([, fields]) => fields.length > 0);
    expect(Object.fromEntries(called)).toEqual(PRIVATE_FIELDS);
  });

  test('is in the content that the site was built from', () => {
    expect(site.secrets.length).toBeGreaterThan(500);
    const content = filesOf(site.content)
      .map((file) => readFileSync(join(site.content, file), 'latin1'))
      .join('\n');
    expect(site.secrets.filter((secret) => !content.includes(secret))).toEqual([]);
  });

  test('is in the photos, as a reader of metadata sees it', async () => {
    expect(photos.length).toBeGreaterThan(20);
    for (const file of photos) {
      const found = await exifr.parse(join(site.content, file), {
        xmp: true,
        icc: true,
        gps: true,
      });
      expect(found.Artist).toMatch(/^undisclosed-photo-/);
      expect(found.ProfileDescription).toEqual(expect.any(String));
      expect(found.latitude).toBeCloseTo(PLANTED_PLACE.latitude, 4);
    }
  });
});

describe('the search for secrets', () => {
  let copy: string;
  beforeAll(async () => {
    copy = await mkdtemp(join(tmpdir(), 'witnessmark-privacy-'));
    await cp(join(site.folder, 'method'), copy, { recursive: true });
  });
  afterAll(() => rm(copy, { recursive: true }));

  const first = (kind: RegExp) =>
    site.secrets.find((secret) => kind.test(secret)) ?? 'none planted';

  test.each([
    ['a supplier', first(/supplier/)],
    ['a receipt', first(/receipt/)],
    ['a serial number', first(/serial/)],
    ["the machine's identity", first(/machine-identity/)],
    ['a number of its identity page', first(/identity-marks-value/)],
    ['a place that was searched', first(/place/)],
    ['where a photo was taken', '54.314'],
  ])('finds %s on a page', async (_, secret) => {
    await writeFile(join(copy, 'page.html'), `<p>bought at ${secret}, a good place</p>`);
    expect(secretsIn(copy)).toEqual([`page.html: ${secret}`]);
    await rm(join(copy, 'page.html'));
  });

  test('finds an original photo under another name, wrapped in something else', async () => {
    const [photo = ''] = photos;
    const bytes = await readFile(join(site.content, photo));
    await writeFile(
      join(copy, 'font.woff2'),
      Buffer.concat([Buffer.from('wOF2'), bytes.subarray(200)]),
    );
    expect(secretsIn(copy)).toContain(`font.woff2: ${photo}`);
    await rm(join(copy, 'font.woff2'));
  });
});
