import { cp, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { PLANTED, plantSecrets } from '../site/plant.ts';
import { demoData } from './demo-data.ts';
import { contentDir } from './raw-ledger.ts';

let copy: string;
let planted: readonly string[];

// A copy of the demo, without its pictures, with a secret in every private field.
beforeAll(async () => {
  copy = await mkdtemp(join(tmpdir(), 'witnessmark-data-'));
  await cp(contentDir, copy, { recursive: true, filter: (path) => !/\.jpe?g$/i.test(path) });
  planted = await plantSecrets(copy);
});
afterAll(() => rm(copy, { recursive: true }));

const secretsIn = (text: string) => text.match(PLANTED) ?? [];

test('no download holds a private field', async () => {
  expect(planted.length).toBeGreaterThan(500);
  const demo = await demoData(copy);
  expect(demo.length).toBeGreaterThan(1);
  for (const { files } of demo)
    for (const [name, text] of Object.entries(files))
      expect([name, secretsIn(text)]).toEqual([name, []]);
});

test('the search finds a secret in a cell', async () => {
  const [data] = await demoData(copy);
  const secret = planted.find((word) => word.includes('supplier')) ?? 'none planted';
  const text = data?.files['costs.csv']?.replace('Van', secret).replace(/,$/m, `,${secret}`) ?? '';
  expect(secretsIn(text)).toContain(secret);
});
