import { generateKeyPairSync, type KeyObject } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { printMarks } from '../../src/trust/mark.ts';
import { type NoteKey, parseKey, printKey } from '../../src/trust/note-key.ts';
import { parseMarks } from '../../src/trust/parse-marks.ts';
import { signMark, verifyMark } from '../../src/trust/sign-mark.ts';
import { marksOf, rowTexts } from './small-ledger.ts';

const { privateKey, publicKey } = generateKeyPairSync('ed25519');
const stranger = generateKeyPairSync('ed25519');
const name = 'example.org/lapwing';
const key: NoteKey = { name, publicKey };

function signedMark(by: KeyObject) {
  const [mark] = marksOf(rowTexts(5), [5], by);
  if (!mark) throw new Error('there is one mark');
  return mark;
}
const mark = signedMark(privateKey);

describe('a signed mark', () => {
  it('is signed by the key under the name of its origin', () => {
    expect(mark.signatures.map((signature) => signature.name)).toEqual([name]);
    expect(verifyMark(mark, key)).toEqual({ holds: true });
  });

  it('is still signed after it was printed and read', () => {
    const [read] = parseMarks(printMarks([mark])).marks;
    expect(read && verifyMark(read, key)).toEqual({ holds: true });
  });

  it.each([
    ['size', { size: 6 }],
    ['root', { root: new Uint8Array(32) }],
    ['date', { date: '2025-01-16' as typeof mark.date }],
    ['origin', { origin: 'example.org/other' }],
  ])('is refused when its %s was changed', (_, change) => {
    expect(verifyMark({ ...mark, ...change }, key)).toEqual({
      holds: false,
      failure: 'signature-differs',
    });
  });

  it('does not count for a key that did not sign, nor for the key under another name', () => {
    const no = { holds: false, failure: 'not-signed-by-this-key' };
    expect(verifyMark(mark, { name, publicKey: stranger.publicKey })).toEqual(no);
    expect(verifyMark(mark, { name: 'example.org/x', publicKey })).toEqual(no);
    expect(verifyMark({ ...mark, signatures: [] }, key)).toEqual(no);
  });

  it('may carry signatures of others too', () => {
    const twice = signMark(signedMark(stranger.privateKey), privateKey);
    expect(twice.signatures.length).toBe(2);
    expect(verifyMark(twice, key)).toEqual({ holds: true });
  });

  it('is refused when one of two signatures that name the key is wrong', () => {
    const forged = mark.signatures.map((own) => ({ ...own, signature: new Uint8Array(64) }));
    const both = { ...mark, signatures: [...mark.signatures, ...forged] };
    expect(verifyMark(both, key)).toEqual({ holds: false, failure: 'signature-differs' });
  });

  it('is refused, not an error, when a signature has another length', () => {
    const cut = mark.signatures.map((own) => ({ ...own, signature: own.signature.slice(0, 9) }));
    expect(verifyMark({ ...mark, signatures: cut }, key)).toEqual({
      holds: false,
      failure: 'signature-differs',
    });
  });
});

describe('the text of a public key', () => {
  const text = printKey(key);

  it('is read back as the same key', () => {
    const read = parseKey(text);
    expect(read?.name).toBe(name);
    expect(read?.publicKey.equals(publicKey)).toBe(true);
    expect(read && verifyMark(mark, read)).toEqual({ holds: true });
  });

  it('never is the private one: both halves print the same', () => {
    expect(printKey({ name, publicKey: privateKey })).toBe(text);
  });

  it.each([
    ['another name', text.replace('lapwing', 'lapwong')],
    ['another id', text.replace(/\+.{8}\+/, '+00000000+')],
    ['a part missing', text.slice(0, -8)],
    ['another kind of key', text.replace(/\+A[Q-f]/, '+Bg')],
    ['nothing', ''],
  ])('is refused with %s', (_, changed) => {
    expect(changed).not.toBe(text);
    expect(parseKey(changed)).toBeUndefined();
  });

  it('exists for Ed25519 only', () => {
    const { publicKey: other } = generateKeyPairSync('x25519');
    expect(() => printKey({ name, publicKey: other })).toThrow('not Ed25519');
  });
});
