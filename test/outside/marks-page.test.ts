import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, expect, inject, test } from 'vitest';
import { openBrowser, serve } from './browser.ts';

const demo = inject('site');
const { browser: noBrowser } = inject('missing');
const browser = await openBrowser();
const site = await serve(demo.folder);
afterAll(async () => {
  await browser?.close();
  site.close();
});

/** Opens the page of marks in a real browser, with some of its files changed on the way; gives what was fetched from elsewhere. */
async function onMarks(
  changes: Readonly<Record<string, (text: string) => string>>,
  use: (page: Page) => Promise<void>,
): Promise<string[]> {
  const page = await browser?.newPage();
  if (page === undefined) throw new Error('there is no browser');
  const elsewhere: string[] = [];
  page.on('request', (request) => {
    if (!request.url().startsWith(site.address)) elsewhere.push(request.url());
  });
  for (const [name, change] of Object.entries(changes))
    await page.route(`**/${name}`, async (route) => {
      const text = await readFile(join(demo.folder, 'lapwing/marks', name), 'utf8');
      await route.fulfill({ body: change(text) });
    });
  await page.goto(`${site.address}lapwing/marks/`);
  await use(page);
  await page.close();
  return elsewhere;
}

async function answerOf(page: Page, button: string): Promise<string> {
  await page.getByRole('button', { name: button }).click();
  const answer = page.getByRole('status').nth(button === 'Check every row' ? 0 : 1);
  await answer.filter({ hasText: /ok|no row/ }).waitFor();
  return (await answer.textContent()) ?? '';
}

test('the page of marks finds the demo as it was marked, and asks no other site', async ({
  skip,
}) => {
  skip(noBrowser !== undefined, noBrowser);
  const elsewhere = await onMarks({}, async (page) => {
    expect(await answerOf(page, 'Check every row')).toMatch(
      /^2025-10-31 \d+ rows: ok\n2026-03-31 \d+ rows: ok\n2026-09-30 \d+ rows: ok\nok: \d+ rows, 3 marks$/,
    );
  });
  expect(elsewhere).toEqual([]);
});

test('the page of marks refuses a row that was changed after the fact', async ({ skip }) => {
  skip(noBrowser !== undefined, noBrowser);
  const cheaper = (text: string) => text.replace('"1650.00"', '"1605.00"');
  await onMarks({ 'rows.jsonl': cheaper }, async (page) => {
    const said = await answerOf(page, 'Check every row');
    expect(said).toMatch(/^2025-10-31 \d+ rows: other rows\n/);
    expect(said).toMatch(/not ok: \d+ failed: line 3 of rows\.jsonl is not proven/);
  });
});

test('the page of marks refuses marks that do not begin with those a reader kept', async ({
  skip,
}) => {
  skip(noBrowser !== undefined, noBrowser);
  const marks = await readFile(join(demo.folder, 'lapwing/marks/marks.txt'), 'utf8');
  const kept = (text: string) => ({
    name: 'marks.txt',
    mimeType: 'text/plain',
    buffer: Buffer.from(text),
  });
  await onMarks({}, async (page) => {
    const input = page.getByLabel('An older marks.txt that you kept, if any');
    await input.setInputFiles(kept(`${marks.split('\n\n')[0]}\n`));
    expect(await answerOf(page, 'Check every row')).toContain('\nok: ');
    await input.setInputFiles(kept(marks.replace('2025-10-31', '2025-10-30')));
    expect(await answerOf(page, 'Check every row')).toBe(
      'not ok: marks.txt is not the one you kept with more added to it',
    );
  });
});

test('the page of marks shows the way from one row to the root, and when it leads elsewhere', async ({
  skip,
}) => {
  skip(noBrowser !== undefined, noBrowser);
  const showing = async (page: Page, id: string) => {
    await page.getByLabel('Id of one row, such as c-001').fill(id);
    return answerOf(page, 'Show its proof');
  };
  await onMarks({}, async (page) => {
    expect(await showing(page, 'c-001')).toMatch(
      /^\{"id":"c-001",.*\}\nleaf {2}\S{44}\n(?:(?:left |right) \S{44}\n)+root {2}\S{44}\nok: the root of 2026-09-30\n$/,
    );
    expect(await showing(page, 'c-999')).toBe('no row "c-999" is under the newest mark');
  });
  const cheaper = (text: string) => text.replace('"1650.00"', '"1605.00"');
  await onMarks({ 'rows.jsonl': cheaper }, async (page) => {
    expect(await showing(page, 'c-001')).toContain('not ok: not the root of 2026-09-30');
  });
});
