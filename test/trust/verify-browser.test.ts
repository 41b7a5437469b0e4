import { createHash } from 'node:crypto';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { publishLedger } from '../../src/trust/publish.ts';
import { load, showRow, verify } from '../../src/trust/verify/verify-browser.js';
import { marksOf, rowTexts } from './small-ledger.ts';

/** A ledger of so many rows, marked at these sizes, as a reader downloads it. */
function published(sizes: readonly number[], rows = rowTexts(sizes.at(-1) ?? 0)) {
  const files = publishLedger(rows, marksOf(rows, sizes));
  return {
    rows: Buffer.from(files['rows.jsonl']),
    marks: Buffer.from(files['marks.txt']),
    proofs: Buffer.from(files['proofs.json']),
  };
}

const sha256 = (...parts: readonly Uint8Array[]) =>
  createHash('sha256').update(Buffer.concat(parts)).digest();
const bytes = (base64: string) => Buffer.from(base64, 'base64');

/** The root that printed lines lead to, worked out with another hash library by RFC 9162 §2.1.1: 0x00 before a row, 0x01 before two hashes. */
function rootBy([row = '', leaf = '', ...steps]: readonly string[]): string {
  let hash = sha256(Buffer.of(0), Buffer.from(row));
  expect(leaf).toBe(`leaf  ${hash.toString('base64')}`);
  for (const step of steps) {
    const [side = '', other = ''] = step.split(/ +/);
    const pair = side === 'left' ? [bytes(other), hash] : [hash, bytes(other)];
    hash = sha256(Buffer.of(1), ...pair);
  }
  return hash.toString('base64');
}

describe('showRow', () => {
  test.for([1, 2, 3, 5, 8, 13])(
    'leads from each of %i rows to the root of the mark',
    async (size) => {
      const files = published([size]);
      const root = Buffer.from(marksOf(rowTexts(size), [size])[0]?.root ?? []).toString('base64');
      for (const [index, text] of rowTexts(size).entries()) {
        const lines = await showRow(files, `c-${index + 1}`);
        expect(lines[0]).toBe(text);
        expect(lines.slice(-3)).toEqual([`root  ${root}`, 'ok: the root of 2025-01-15', '']);
        const steps = lines.slice(2, -3);
        expect(steps.every((step) => /^(left |right) \S{44}$/.test(step))).toBe(true);
        expect(rootBy(lines.slice(0, -3))).toBe(root);
      }
    },
  );

  test('shows all lines that have an id, since a row can grow', async () => {
    const [first = '', second = '', third = ''] = rowTexts(3);
    const files = published([3], [first, second, third.replace('"c-3"', '"c-1"')]);
    const lines = await showRow(files, 'c-1');
    expect(lines.filter((line) => line.startsWith('ok: the root'))).toHaveLength(2);
    expect(await showRow(files, 'c-9')).toEqual(['no row "c-9" is under the newest mark']);
  });

  test('says where the way leads to another root', async () => {
    const files = published([5]);
    const other = published([5], rowTexts(6).slice(1));
    const lines = await showRow({ ...files, marks: other.marks }, 'c-2');
    expect(lines.at(-2)).toBe('not ok: not the root of 2025-01-15');
    const proofs = JSON.parse(files.proofs.toString());
    proofs.inclusion[1].pop();
    const short = await showRow({ ...files, proofs: Buffer.from(JSON.stringify(proofs)) }, 'c-2');
    expect(short.at(-2)).toBe('not ok: not the root of 2025-01-15');
  });
});

describe('load', () => {
  afterEach(() => vi.unstubAllGlobals());
  const serving = (status: (name: string) => number) => {
    const asked: string[] = [];
    vi.stubGlobal('fetch', async (url: URL) => {
      asked.push(url.href);
      const name = url.pathname.split('/').at(-1) ?? '';
      return new Response(name, { status: status(name) });
    });
    return asked;
  };

  test('fetches the three files from the folder of an address', async () => {
    const asked = serving(() => 200);
    const { rows, marks, proofs } = await load('https://shed.example/press/marks/verify.js');
    expect([rows, marks, proofs].map((part) => Buffer.from(part).toString())).toEqual([
      ...['rows.jsonl', 'marks.txt', 'proofs.json'],
    ]);
    expect(asked).toEqual(
      ['rows.jsonl', 'marks.txt', 'proofs.json'].map(
        (name) => `https://shed.example/press/marks/${name}`,
      ),
    );
  });

  test('says which file is not there', async () => {
    serving((name) => (name === 'marks.txt' ? 404 : 200));
    await expect(load('https://shed.example/')).rejects.toThrow("marks.txt can't be loaded (404)");
  });
});

describe('verify', () => {
  const sound = published([3, 5]);
  const saidOf = async (changes: Partial<typeof sound> & { kept?: Uint8Array }) =>
    (await verify({ ...sound, ...changes })).lines.at(-1);
  const edited = (part: keyof typeof sound, edit: (text: string) => string) => ({
    [part]: Buffer.from(edit(sound[part].toString())),
  });

  /** Proofs with something else in place of the first of them. */
  const firstProof = (edit: (proof: string[]) => unknown) => (text: string) => {
    const { inclusion, ...rest } = JSON.parse(text);
    return JSON.stringify({ ...rest, inclusion: inclusion.with(0, edit(inclusion[0])) });
  };
  const firstHash = (edit: (hash: string) => unknown) =>
    firstProof(([hash = '', ...others]) => [edit(hash), ...others]);

  test('says a line for each mark, and what was counted', async () => {
    expect(await verify(sound)).toEqual({
      ok: true,
      lines: ['2025-01-15 3 rows: ok', '2025-02-15 5 rows: ok', 'ok: 5 rows, 2 marks'],
    });
    const { lines } = await verify({
      ...sound,
      ...edited('rows', (text) => text.replace('0.50', '0.51')),
    });
    expect(lines.slice(0, 2)).toEqual([
      '2025-01-15 3 rows: other rows',
      '2025-02-15 5 rows: other rows',
    ]);
  });

  test.for<[string, Parameters<typeof edited>, string]>([
    ['marks without their end', ['marks', (text) => text.trimEnd()], 'marks.txt is cut off'],
    ['an empty marks.txt', ['marks', () => '\n'], 'neither a mark nor signatures'],
    ['signatures before any mark', ['marks', (text) => `— x y\n\n${text}`], 'neither a mark nor'],
    ['a mark twice', ['marks', (text) => `${text}\n${text}`], 'does not follow that of'],
    [
      'a hash that is too long',
      ['marks', (text) => text.replace(/\S{43}=/, (hash) => `A${hash}`)],
      'neither a mark',
    ],
    [
      'a root that is no hash',
      ['marks', (text) => text.replace(/\S{43}=/, '*'.repeat(44))],
      `${'*'.repeat(44)} is no hash`,
    ],
    ['a proof that is a text', ['proofs', firstProof(() => 'x')], '1 failed: line 1 of rows.jsonl'],
    [
      'a hash in a proof that is longer',
      ['proofs', firstHash((hash) => `A${hash}`)],
      '1 failed: line 1 of rows.jsonl',
    ],
    [
      'a hash in a proof with more after it',
      ['proofs', firstHash((hash) => `${hash}A`)],
      '1 failed: line 1 of rows.jsonl',
    ],
    ['a number for a hash', ['proofs', firstHash(() => 7)], '1 failed: line 1 of rows.jsonl'],
    ['no proofs at all', ['proofs', () => '{}'], 'proofs.json does not fit marks.txt'],
    [
      'no consistency',
      ['proofs', (text) => text.replace('"consistency"', '"else"')],
      'proofs.json does not fit',
    ],
    ['an empty first row', ['rows', (text) => `\n${text}`], 'does not have the 5 rows'],
    ['a byte order mark before marks', ['marks', (text) => `\ufeff${text}`], 'neither a mark nor'],
  ])('refuses %s', async ([, [part, edit], said]) => {
    const changes = edited(part, edit);
    expect(changes[part]).not.toEqual(sound[part]);
    expect(await saidOf(changes)).toMatch(/^not ok: /);
    expect(await saidOf(changes)).toContain(said);
  });

  test('names five failures and counts all', async () => {
    const { consistency } = JSON.parse(sound.proofs.toString());
    const proofs = (steps: unknown) =>
      edited('proofs', () =>
        JSON.stringify({ inclusion: [[], [], [], [], []], consistency: steps }),
      );
    const named = [1, 2, 3, 4, 5].map((line) => `line ${line} of rows.jsonl is not proven`);
    expect(await saidOf(proofs(consistency))).toBe(`not ok: 5 failed: ${named.join('; ')}`);
    expect(await saidOf(proofs([[]]))).toBe(`not ok: 6 failed: ${named.join('; ')}`);
  });

  test('refuses bytes that are no UTF-8, and a kept file that is longer than the one there is', async () => {
    expect(await saidOf({ marks: Buffer.concat([Buffer.of(0xff), sound.marks]) })).toMatch(
      /^not ok: /,
    );
    const kept = Buffer.concat([sound.marks, Buffer.from('x')]);
    expect(await saidOf({ kept })).toBe(
      'not ok: marks.txt is not the one you kept with more added to it',
    );
    expect(await saidOf({ kept: sound.marks })).toBe('ok: 5 rows, 2 marks');
  });
});
