import { execFile } from 'node:child_process';
import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { parse } from 'yaml';
import { attribute, readPages, select, textOf } from '../site/pages.ts';
import { PLANTED } from '../site/plant.ts';

// The PDF is read by poppler, a reader of PDFs that has nothing to do with what wrote it.
const site = inject('site');
const { browser: noBrowser, poppler: noPoppler } = inject('missing');
const missing = noBrowser ?? noPoppler;
const run = promisify(execFile);

let home: string;
beforeAll(async () => {
  home = await mkdtemp(join(tmpdir(), 'witnessmark-dossier-'));
  if (missing === undefined) await print('first');
});
afterAll(() => rm(home, { recursive: true }));

/** Prints the lathe's dossier into a folder of its own, from the site that was built for the tests. */
async function print(
  name: string,
  args: readonly string[] = [],
  circumstances: Readonly<Record<string, string>> = {},
): Promise<string> {
  const out = join(home, name);
  const command = ['src/cli/run.mjs', 'dossier', 'ostermoor', '--built', '--out', out, ...args];
  const env = { WITNESSMARK_CONTENT: site.content, WITNESSMARK_DIST: site.folder };
  await run(process.execPath, command, { env: { ...process.env, ...env, ...circumstances } });
  const [file = ''] = await readdir(out);
  return join(out, file);
}

const first = () => join(home, 'first/ostermoor.pdf');

/** The text of the pages of a PDF, lines as they stand on paper. */
async function pagesOf(file: string): Promise<string[]> {
  const { stdout } = await run('pdftotext', ['-layout', file, '-']);
  return stdout.split('\f').slice(0, -1);
}

/** Number, title and page of each line of the contents. */
async function contentsOf(file: string): Promise<{ heading: string; page: number }[]> {
  const [cover = ''] = await pagesOf(file);
  return [...cover.matchAll(/^\s*(\d+)\. (.+?)\s{3,}(\d+)$/gm)].map(([, number, title, page]) => ({
    heading: `${number} ${title}`,
    page: Number(page),
  }));
}

const page = readPages(site).find(({ file }) => file === 'ostermoor/dossier/index.html');
const headings = page ? select(page.root, 'h2').map(textOf) : [];

describe('the printed dossier, read by poppler', () => {
  test('says in its contents on which page each section stands', async ({ skip }) => {
    skip(missing !== undefined, missing);
    const pages = await pagesOf(first());
    const contents = await contentsOf(first());
    expect(contents.map(({ heading }) => heading)).toEqual(headings.slice(1));
    const astray = contents.filter(
      ({ heading, page: number }) => !pages[number - 1]?.match(new RegExp(`^\\s*${heading}$`, 'm')),
    );
    expect(astray).toEqual([]);
    expect(contents.length).toBeGreaterThan(12);
  });

  test('would be caught with a wrong page in its contents', async ({ skip }) => {
    skip(missing !== undefined, missing);
    const pages = await pagesOf(first());
    const specs = (await contentsOf(first())).find(({ heading }) => heading.endsWith('Specs'));
    expect(pages[specs?.page ?? 0]).not.toMatch(/^\s*\d+ Specs$/m);
  });

  test('has its title block, a running head and the number of each page', async ({ skip }) => {
    skip(missing !== undefined, missing);
    const [cover = '', ...others] = await pagesOf(first());
    for (const text of ['Oran Kilbrack', 'OSTERMOOR-DO', '1951 Ostermoor 65', '27 June 2026'])
      expect(cover).toContain(text);
    const { stdout } = await run('pdfinfo', [first()]);
    expect(Number(/^Pages:\s+(\d+)$/m.exec(stdout)?.[1])).toBe(others.length + 1);
    for (const [index, text] of others.entries()) {
      expect(text).toMatch(/^Ostermoor bench lathe: dossier\s+1951 Ostermoor 65$/m);
      expect(text).toContain(`Page ${index + 2} of ${others.length + 1}`);
    }
  });

  test('is tagged, and has its sections in the outline, each once and with its page', async ({
    skip,
  }) => {
    skip(missing !== undefined, missing);
    expect((await run('pdfinfo', [first()])).stdout).toMatch(/^Tagged:\s+yes$/m);
    const args = ['-xml', '-i', '-stdout', first()];
    const { stdout } = await run('pdftohtml', args, { maxBuffer: 2 ** 26 });
    const items = [...stdout.matchAll(/<item page="(\d+)">(.+)<\/item>/g)];
    const outline = items.map(([, number, heading = '']) => ({ heading, page: Number(number) }));
    const sections = outline.filter(({ heading }) => /^\d+ /.test(heading));
    expect(sections).toEqual(await contentsOf(first()));
  });

  test('links to the published address of what stands behind a figure', async ({ skip }) => {
    skip(missing !== undefined, missing);
    const links = (await readFile(first(), 'latin1')).match(/\/URI \(([^)]*)\)/g) ?? [];
    expect(links.length).toBeGreaterThan(100);
    expect(links.filter((link) => !link.startsWith(`/URI (${site.address}`))).toEqual([]);
  });

  test('is the same to the byte when it is printed on another day in another zone', async ({
    skip,
  }) => {
    skip(missing !== undefined, missing);
    const elsewhere = {
      NODE_OPTIONS: `--import ${pathToFileURL(resolve('test/site/elsewhere.ts'))}`,
      ELSEWHERE: '200 3',
      ...{ TZ: 'Pacific/Auckland', LC_ALL: 'tr_TR.UTF-8' },
    };
    const again = await print('second', [], elsewhere);
    expect((await readFile(again)).equals(await readFile(first()))).toBe(true);
  });

  test('has whole numbers in a private copy alone, under a name of its own', async ({ skip }) => {
    skip(missing !== undefined, missing);
    const project = await readFile(join(site.content, 'ostermoor/project.yaml'), 'utf8');
    const { marks } = parse(project).identity as { marks: { value: string }[] };
    const file = await print('private', ['--identity', 'full', '--paper', 'letter']);
    expect(file).toMatch(/ostermoor-private\.pdf$/);
    const words = (text: string) => text.replace(/\s+/g, '');
    const whole = words((await pagesOf(file)).join('\n'));
    const masked = words((await pagesOf(first())).join('\n'));
    expect(marks.length).toBeGreaterThan(1);
    for (const { value } of marks) {
      expect(value).toMatch(PLANTED);
      expect(masked).not.toContain(value);
    }
    expect(whole.match(/undisclosed/g)?.length).toBe(marks.length);
    expect(whole).toContain('Privatecopy');
    expect(masked).not.toContain('undisclosed');
  });
});

describe('the page of the dossier', () => {
  test('shows the end of a released number, and nothing of one that is not', () => {
    const cells = page ? select(page.root, 'td') : [];
    const numbers = cells.filter((cell) => attribute(cell, 'data-number') !== undefined);
    expect(numbers.map(textOf)).toEqual(['… ue-0', 'not published']);
  });
});
