import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import lighthouse from 'lighthouse';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { yearsOf } from '../../src/ledger/by-year.ts';
import { openBuiltDemo } from '../site/built-book.ts';
import { openBrowser, serve } from './browser.ts';

// Lighthouse as it comes: a middling phone on a slow network, simulated, so that a busy machine changes little.
const { browser: noBrowser } = inject('missing');
const port = await freePort();
const browser = await openBrowser([`--remote-debugging-port=${port}`]);
const site = await serve(inject('site').folder);
const planted = await mkdtemp(join(tmpdir(), 'witnessmark-lighthouse-'));
const bad = await serve(planted);
const { book } = await openBuiltDemo();

/** No title, no language, faint text, a picture without words or size, a script that fails. */
const BAD = `<!doctype html><html><head></head><body><p style="color:#ccc">faint</p>
<img src="gone.png"><a href="/x">click here</a><script>nothing()</script></body></html>`;

beforeAll(() => writeFile(join(planted, 'index.html'), BAD));
afterAll(async () => {
  await browser?.close();
  site.close();
  bad.close();
  await rm(planted, { recursive: true });
});

/** A port that nobody listens on. */
async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  const address = server.address();
  await new Promise((closed) => server.close(closed));
  return typeof address === 'object' && address ? address.port : 0;
}

const CATEGORIES = ['performance', 'accessibility', 'best-practices', 'seo'];

/** Scores of a page from 0 to 100, and what cost it points. */
async function judge(address: string) {
  const result = await lighthouse(address, {
    ...{ port, output: 'json', logLevel: 'silent' },
    onlyCategories: CATEGORIES,
  });
  if (result === undefined) throw new Error('there is no result');
  const { categories, audits } = result.lhr;
  const scores = CATEGORIES.map((name) => Math.round(100 * (categories[name]?.score ?? 0)));
  const lost = Object.values(audits)
    .filter(({ score }) => score !== null && score < 0.9)
    .map(({ id }) => id);
  return { scores, lost };
}

describe('Lighthouse', () => {
  const [project] = book.projects;
  const spec = project?.now.specs.find(({ latest, verdict }) => latest && verdict)?.spec.id;
  const pages = [
    `lapwing/log/${project?.entries[1]?.slug}/`,
    `lapwing/specs/${spec}/`,
    `lapwing/costs/${project && yearsOf(project.costs).at(-1)}/`,
  ];

  test.for(pages)('gives /%s full marks four times', { retry: 1 }, async (path, { skip }) => {
    skip(noBrowser !== undefined, noBrowser);
    const { scores, lost } = await judge(site.address + path);
    expect({ scores, lost: scores.every((score) => score === 100) ? [] : lost }).toEqual({
      scores: [100, 100, 100, 100],
      lost: [],
    });
  });

  test('finds what is planted', async ({ skip }) => {
    skip(noBrowser !== undefined, noBrowser);
    const { scores, lost } = await judge(bad.address);
    expect(lost).toEqual(
      expect.arrayContaining([
        'document-title',
        'html-has-lang',
        'image-alt',
        'color-contrast',
        'errors-in-console',
      ]),
    );
    expect(Math.max(...scores.slice(1))).toBeLessThan(100);
  });
});
