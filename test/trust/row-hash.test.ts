import { describe, expect, it } from 'vitest';
import {
  type LedgerRow,
  makeSalt,
  privateHash,
  type RowFields,
  rowLeaf,
  rowText,
} from '../../src/trust/row-hash.ts';

const salt = '000102030405060708090a0b0c0d0e0f';
const row: LedgerRow = {
  kind: 'costs',
  id: 'c-7',
  serial: 3,
  public: { what: 'Paint', amount: '12.50', parts: ['hood', 'door'] },
};
const secret = { supplier: 'Hollis & Daughter' };

describe('the text of a row', () => {
  it('is the canonical JSON of its public fields, with its kind, id and serial', () => {
    expect(rowText(row)).toBe(
      '{"id":"c-7","kind":"costs","public":{"amount":"12.50","parts":["hood","door"],"what":"Paint"},"serial":3}',
    );
  });

  it('has a hash in place of the private fields, and nothing else of them', () => {
    const text = rowText({ ...row, private: secret, salt });
    expect(JSON.parse(text)).toEqual({
      ...JSON.parse(rowText(row)),
      privateHash: privateHash(secret, salt),
    });
    expect(text).not.toContain('Hollis');
    expect(text).not.toContain(salt);
  });

  it('may have a public field that is called like one of its own', () => {
    const { kind, public: fields } = JSON.parse(rowText({ ...row, public: { kind: 'refund' } }));
    expect([kind, fields]).toEqual(['costs', { kind: 'refund' }]);
  });

  it('is the same whether private fields are absent or none', () => {
    expect(rowText({ ...row, private: {}, salt })).toBe(rowText(row));
  });

  it.each<[string, Partial<Record<keyof LedgerRow, unknown>>, string]>([
    ['a fraction', { public: { amount: 12.5 } }, '$.public.amount is 12.5'],
    ['a number too large', { public: { n: 2 ** 53 } }, '$.public.n is 9007199254740992'],
    ['yes or no', { public: { done: true } }, '$.public.done is true'],
    ['null', { public: { list: ['a', null] } }, '$.public.list[1] is null'],
    ['a missing value', { public: { what: undefined } }, '$.public.what is undefined'],
    ['half a serial', { serial: 1.5 }, '$.serial is 1.5'],
    ['a private fraction', { private: { price: 0.5 }, salt }, '$.private.price is 0.5'],
    ['half a surrogate pair', { id: '\ud83d' }, '$.id has half a surrogate pair'],
    ['private fields without a salt', { private: secret }, 'need a salt'],
    ['a salt too short', { private: secret, salt: salt.slice(2) }, 'need a salt'],
    ['a salt too long', { private: secret, salt: `${salt}0f` }, 'need a salt'],
    ['a salt after something else', { private: secret, salt: `0x${salt}` }, 'need a salt'],
  ])('refuses %s', (_, change, message) => {
    // What a table holds is not known to the compiler.
    expect(() => rowText({ ...row, ...change } as LedgerRow)).toThrow(message);
  });
});

describe('the leaf of a row', () => {
  const leaf = Buffer.from(rowLeaf(rowText({ ...row, private: secret, salt }))).toString('hex');
  it.each<[string, Partial<LedgerRow>]>([
    ['a public field', { public: { ...row.public, amount: '12.51' } }],
    ['the serial', { serial: 4 }],
    ['a private field', { private: { supplier: 'Hollis and Daughter' } }],
    ['the name of a private field', { private: { receipt: 'Hollis & Daughter' } }],
    ['the salt', { salt: salt.replace('f', 'e') }],
    ['the private fields, left out', { private: undefined }],
  ])('is another when one changes: %s', (_, change) => {
    const changed = rowLeaf(rowText({ ...row, private: secret, salt, ...change }));
    expect(Buffer.from(changed).toString('hex')).not.toBe(leaf);
  });
});

describe('a salt', () => {
  it('is 16 bytes of the source it is given, in hex', () => {
    expect(makeSalt((count) => Uint8Array.from({ length: count }, (_, index) => index))).toBe(salt);
  });

  it('is not made from a source that gives too little', () => {
    expect(() => makeSalt(() => Uint8Array.of(1))).toThrow('16 bytes');
  });

  it('makes the same supplier hash differently in two rows', () => {
    const fields: RowFields = secret;
    expect(privateHash(fields, salt)).not.toBe(privateHash(fields, salt.replace('0', '1')));
  });
});
