import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, inject, test } from 'vitest';
import { marksOf } from '../../src/mark/ledger-marks.ts';
import { parseSecrets, saltOf } from '../../src/mark/salts.ts';
import { writtenFields } from '../../src/mark/written-fields.ts';
import { readContent } from '../../src/read/content.ts';
import { noPython } from '../outside/trust-askers.ts';
import { filesOf } from './pages.ts';

const site = inject('site');
const { projects } = await readContent(site.content);
const folders: string[] = [];
afterAll(() => Promise.all(folders.map((folder) => rm(folder, { recursive: true }))));

/** A copy of what a reader downloads, changed by the reader. */
async function downloaded(
  project: string,
  changes: Readonly<Record<string, (text: string) => string>>,
) {
  const folder = await mkdtemp(join(tmpdir(), 'witnessmark-download-'));
  folders.push(folder);
  await cp(join(site.folder, project, 'marks'), folder, { recursive: true });
  for (const [name, change] of Object.entries(changes)) {
    const before = await readFile(join(folder, name), 'utf8');
    const after = change(before);
    if (after === before) throw new Error(`nothing changed in ${name}`);
    await writeFile(join(folder, name), after);
  }
  return folder;
}

function runPython(folder: string, ...more: string[]) {
  const run = spawnSync('python3', ['verify.py', '.', ...more], { cwd: folder, encoding: 'utf8' });
  return { status: run.status, said: run.stdout };
}

describe.skipIf(noPython)('verify.py, downloaded from the site with the files it checks', () => {
  test.each(projects.map(({ id }) => id))('accepts the demo project %s', async (project) => {
    const { status, said } = runPython(await downloaded(project, {}));
    expect(said).toMatch(/\nok: \d+ rows, \d marks\n$/);
    expect(status).toBe(0);
  });

  test.each([
    ['an amount', 'rows.jsonl', (text: string) => text.replace('"1650.00"', '"1605.00"')],
    [
      'two rows in each other’s place',
      'rows.jsonl',
      (text: string) => text.replace(/^(.*\n)(.*\n)/, '$2$1'),
    ],
    ['a row taken out', 'rows.jsonl', (text: string) => text.replace(/^.*\n/, '')],
    [
      'a root',
      'marks.txt',
      (text: string) => text.replace(/^[A-Za-z0-9+/]{43}=$/m, `${'A'.repeat(43)}=`),
    ],
    [
      'a proof',
      'proofs.json',
      (text: string) => text.replace(/"[A-Za-z0-9+/]{43}="/, `"${'A'.repeat(43)}="`),
    ],
  ])('refuses a copy with another %s', async (_, file, change) => {
    const { status, said } = runPython(await downloaded('lapwing', { [file]: change }));
    expect(said).toMatch(/\nnot ok: |^not ok: /);
    expect(status).toBe(1);
  });

  test('refuses marks that are not those a reader kept, with more added', async () => {
    const folder = await downloaded('lapwing', {});
    const marks = await readFile(join(folder, 'marks.txt'), 'utf8');
    const [first = ''] = marks.split('\n\n');
    await writeFile(join(folder, 'kept.txt'), `${first}\n`);
    expect(runPython(folder, 'kept.txt').status).toBe(0);
    await writeFile(join(folder, 'kept.txt'), `${first.replace('2025', '2024')}\n`);
    expect(runPython(folder, 'kept.txt').said).toContain('is not the one you kept');
  });
});

const openssl = spawnSync('openssl', ['version'], { encoding: 'utf8' }).stdout ?? '';
const noOpenssl = Number(/^OpenSSL (\d+)/.exec(openssl)?.[1] ?? 0) < 3;

describe.skipIf(noOpenssl)('the commands for openssl on the page of marks', () => {
  const page = readFileSync(join(site.folder, 'lapwing/marks/index.html'), 'utf8');
  const commands = (/<pre>(printf[^<]*)<\/pre>/.exec(page)?.[1] ?? '')
    .replaceAll('&#39;', "'")
    .replaceAll('&gt;', '>');
  const run = (folder: string, text: string) =>
    spawnSync('sh', ['-c', text], { cwd: folder, encoding: 'utf8' });

  test('verify the signature with the key beside it', async () => {
    const { stdout, status } = run(await downloaded('lapwing', {}), commands);
    expect(stdout).toContain('Signature Verified Successfully');
    expect(status).toBe(0);
  });

  test('refuse another date', async () => {
    const { status } = run(
      await downloaded('lapwing', {}),
      commands.replace('date 2026', 'date 2025'),
    );
    expect(status).not.toBe(0);
  });
});

test('no file of the site holds a secret of marks or the salt of a row', () => {
  const salts = projects.flatMap((project) => {
    const marks = marksOf(project);
    const secrets = parseSecrets(project.marks.secret ?? '') ?? [];
    if ('problems' in marks || secrets.length === 0) throw new Error(`${project.id} has no marks`);
    const hidden = marks.rows.filter(({ privateHash }) => privateHash !== undefined);
    expect(hidden.length).toBeGreaterThan(20);
    return secrets.flatMap((secret) => [
      secret.key.export().toString('hex'),
      ...hidden.map(({ kind, id }) => saltOf(secret, kind, id)),
    ]);
  });
  const found = filesOf(site.folder).flatMap((file) => {
    const text = readFileSync(join(site.folder, file), 'latin1');
    return salts.filter((salt) => text.includes(salt)).map((salt) => `${file}: ${salt}`);
  });
  expect(found).toEqual([]);
});

test('the rows of the site hold every published field as it was typed, and no other', async () => {
  for (const project of projects) {
    const text = await readFile(join(site.folder, project.id, 'marks/rows.jsonl'), 'utf8');
    const last = new Map(
      text
        .trimEnd()
        .split('\n')
        .map((line) => JSON.parse(line))
        .map((row) => [row.id, row]),
    );
    for (const { value, raw } of project.lists.costs)
      expect(last.get(value.id).public).toEqual(writtenFields('costs', raw, project.marks).public);
    expect([...last.values()].flatMap((row) => Object.keys(row.public))).not.toContain('supplier');
  }
});
