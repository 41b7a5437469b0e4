import { generateKeyPairSync } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { printMarks } from '../../src/trust/mark.ts';
import { type PublishedLedger, publishLedger } from '../../src/trust/publish.ts';
import { marksOf, rowTexts } from '../trust/small-ledger.ts';
import { askBrowser, askPython, noPython } from './trust-askers.ts';

const { privateKey } = generateKeyPairSync('ed25519');
const sizes = [3, 4, 8, 13];
const rows = rowTexts(13);
const marks = marksOf(rows, sizes);
const sound = publishLedger(rows, marks);

/** What a builder could publish who changed row 2 after the fact, keeps so many marks as they were, and works out all else anew. */
function rewritten(keptMarks: number): PublishedLedger {
  const others = rows.with(1, rows[1]?.replace('1.50', '1.05') ?? '');
  const theirMarks = marksOf(others, sizes);
  const mixed = [...marks.slice(0, keptMarks), ...theirMarks.slice(keptMarks)];
  return { ...publishLedger(others, theirMarks), 'marks.txt': printMarks(mixed) };
}

const inRows = (edit: (lines: string[]) => string[]): Partial<PublishedLedger> => {
  const lines = edit(sound['rows.jsonl'].trimEnd().split('\n'));
  return { 'rows.jsonl': lines.map((line) => `${line}\n`).join('') };
};
const inMarks = (from: string | RegExp, to: string): Partial<PublishedLedger> => {
  return { 'marks.txt': sound['marks.txt'].replace(from, to) };
};
type Proofs = Record<'inclusion' | 'consistency', string[][]>;
const inProofs = (edit: (proofs: Proofs) => unknown): Partial<PublishedLedger> => {
  return { 'proofs.json': JSON.stringify(edit(JSON.parse(sound['proofs.json']))) };
};
const inProof = (edit: (proof: string[]) => string[]) =>
  inProofs(({ inclusion, ...rest }) => {
    return { ...rest, inclusion: inclusion.with(6, edit(inclusion[6] ?? [])) };
  });
const theRoot = Buffer.from(marks[2]?.root ?? []).toString('base64');
const wrongRow = 'line 7 of rows.jsonl is not proven';
const wrongStep = 'the mark of 2025-03-15 is not proven to extend that of 2025-02-15';
const inStep = (edit: (proof: string[]) => string[]) =>
  inProofs(({ consistency, ...rest }) => {
    return { ...rest, consistency: consistency.with(1, edit(consistency[1] ?? [])) };
  });
/** Another spelling of the same hash: base64 whose two spare bits are not zero. */
const respelt = (hash = '') =>
  hash.replace(/.=$/, (end) => `${String.fromCharCode(end.charCodeAt(0) + 1)}=`);
const stranger = Buffer.alloc(32, 7).toString('base64');

const tampered: [string, Partial<PublishedLedger>, string][] = [
  ['a changed row', inRows((all) => all.with(6, `${all[6]?.replace('6.50', '6.05')}`)), wrongRow],
  ['a space in a row', inRows((all) => all.with(6, `${all[6]} `)), wrongRow],
  ['rows that changed places', inRows(([a = '', b = '', ...more]) => [b, a, ...more]), 'line 2'],
  ['a row left out', inRows((all) => all.toSpliced(4, 1)), 'the 13 rows of the newest mark'],
  ['a row put in between', inRows((all) => all.toSpliced(4, 0, '{}')), 'the 13 rows'],
  ['a row more at the end', inRows((all) => [...all, '{}']), 'the 13 rows'],
  ['the last row cut', { 'rows.jsonl': sound['rows.jsonl'].slice(0, -1) }, 'the 13 rows'],
  ['no rows', { 'rows.jsonl': '' }, 'the 13 rows'],
  ['a byte order mark', { 'rows.jsonl': `\ufeff${sound['rows.jsonl']}` }, 'line 1 of rows.jsonl'],
  ['Windows line ends', inRows((all) => all.map((line) => `${line}\r`)), '17 failed: line 1 of'],
  ['a rewritten row with the first mark kept', rewritten(1), 'rows are not those of the mark'],
  ['a rewritten row with three marks kept', rewritten(3), 'the mark of 2025-03-15'],
  ['a rewritten row with all marks kept', rewritten(4), 'line 2 of rows.jsonl'],
  ['another size of a mark', inMarks('\n8\n', '\n7\n'), 'not those of the mark'],
  ['a root of a mark', inMarks(/(\n8\n)[^\n]+/, `$1${stranger}`), wrongStep],
  ['a root that is none', inMarks(/(\n8\n)[^\n]+/, `$1${'*'.repeat(44)}`), 'not ok'],
  ['a root spelt otherwise', inMarks(/(?<=\n8\n)[^\n]+/, respelt(theRoot)), 'no hash'],
  ['marks that changed places', inMarks('\n3\n', '\n5\n'), 'does not follow'],
  ['another origin of one mark', inMarks('lapwing', 'plover'), 'does not follow'],
  ['one mark left out', inMarks(/\n\n[^\n]+\n8\n[^\n]+\n[^\n]+/, ''), 'proofs.json does not fit'],
  ['a mark without its date', inMarks('date 2025-02-15', 'date'), 'neither a mark nor'],
  ['a mark without its end', { 'marks.txt': sound['marks.txt'].trimEnd() }, 'marks.txt is cut off'],
  ['no marks', { 'marks.txt': '' }, 'marks.txt is cut off'],
  ['a proof without its last hash', inProof((proof) => proof.slice(0, -1)), wrongRow],
  ['a proof without its hashes', inProof(() => []), wrongRow],
  ['a proof with a hash more', inProof((proof) => [...proof, stranger]), wrongRow],
  ['a proof with a hash before', inProof((proof) => [stranger, ...proof]), wrongRow],
  ['a proof with another hash', inProof((proof) => proof.with(2, stranger)), wrongRow],
  ['a proof the other way round', inProof((proof) => proof.toReversed()), wrongRow],
  ['a proof of text that is no hash', inProof((proof) => proof.with(0, 'none')), wrongRow],
  ['a proof spelt otherwise', inProof(([a, ...more]) => [respelt(a), ...more]), wrongRow],
  ['a proof of numbers', inProof(() => [1, 2, 3, 4] as unknown as string[]), wrongRow],
  ['a step without its last hash', inStep((proof) => proof.slice(0, -1)), wrongStep],
  ['a step without its hashes', inStep(() => []), wrongStep],
  ['a step with a hash more', inStep((proof) => [...proof, stranger]), wrongStep],
  ['a step with another hash', inStep((proof) => proof.with(0, stranger)), wrongStep],
  ['one proof too few', inProofs((all) => ({ ...all, inclusion: [] })), 'does not fit marks.txt'],
  ['one step too few', inProofs((all) => ({ ...all, consistency: [] })), 'does not fit marks.txt'],
  ['proofs of another shape', inProofs(() => ({})), 'not ok'],
  ['proofs that are a list', inProofs(() => []), 'not ok'],
  ['proofs that are no JSON', { 'proofs.json': 'proofs' }, 'not ok'],
];

const verifiers = [
  ['Python', askPython, noPython],
  ['browser', askBrowser, false],
] as const;

describe.each(verifiers)('the %s verifier', (_, ask, missing) => {
  it.skipIf(missing)('accepts a sound ledger, with one line a mark', async () => {
    expect(await ask(sound)).toEqual({
      ok: true,
      lines: [
        '2025-01-15 3 rows: ok',
        '2025-02-15 4 rows: ok',
        '2025-03-15 8 rows: ok',
        '2025-04-15 13 rows: ok',
        'ok: 13 rows, 4 marks',
      ],
    });
  });

  it.skipIf(missing)('accepts signed marks, and a ledger of one row', async () => {
    const signed = publishLedger(rows, marksOf(rows, [5, 13], privateKey));
    expect((await ask(signed)).ok).toBe(true);
    const single = publishLedger(rows, marksOf(rows, [1], privateKey));
    expect((await ask(single)).lines).toEqual(['2025-01-15 1 rows: ok', 'ok: 1 rows, 1 marks']);
  });

  it.skipIf(missing).each(tampered)('refuses %s', async (_, change, says) => {
    const { ok, lines } = await ask({ ...sound, ...change });
    expect(ok).toBe(false);
    expect(lines.at(-1)).toMatch(/^not ok: /);
    expect(lines.join('\n')).toContain(says);
  });

  it.skipIf(missing)('needs marks that a reader kept to refuse a whole new history', async () => {
    expect((await ask(rewritten(0))).ok).toBe(true);
    const kept = printMarks(marks.slice(0, 2));
    expect((await ask(sound, kept)).ok).toBe(true);
    expect(await ask(rewritten(0), kept)).toEqual({
      ok: false,
      lines: ['not ok: marks.txt is not the one you kept with more added to it'],
    });
  });
});

test.skipIf(noPython)('both verifiers say the same of every changed row', async () => {
  for (const [index, row] of rows.entries()) {
    const changed = { ...sound, ...inRows((all) => all.with(index, `${row}x`)) };
    expect(await askBrowser(changed)).toEqual(await askPython(changed));
  }
});

test('the browser verifier refuses every flipped bit, with the marks that a reader kept', async () => {
  const names = ['rows.jsonl', 'marks.txt', 'proofs.json'] as const;
  await fc.assert(
    fc.asyncProperty(fc.constantFrom(...names), fc.nat(), fc.nat(7), async (name, at, bit) => {
      const bytes = Buffer.from(sound[name]);
      const place = at % bytes.length;
      bytes[place] = (bytes[place] ?? 0) ^ (1 << bit);
      const changed = { ...sound, [name]: bytes };
      expect((await askBrowser(changed, sound['marks.txt'])).ok).toBe(false);
    }),
  );
});
