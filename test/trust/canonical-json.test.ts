import { describe, expect, it, test } from 'vitest';
import { canonicalJson } from '../../src/trust/canonical-json.ts';

describe('the canonical JSON of plain data', () => {
  it.each([
    [null, 'null'],
    [true, 'true'],
    [-0, '0'],
    [1e21, '1e+21'],
    [0.1 + 0.2, '0.30000000000000004'],
    ['"\\\b\t\n\f\r\u0001/', '"\\"\\\\\\b\\t\\n\\f\\r\\u0001/"'],
    ['\u2028 é 😀', '"\u2028 é 😀"'],
    [[], '[]'],
    [{}, '{}'],
    [[3, [1, 2]], '[3,[1,2]]'],
    [{ b: 1, a: { d: 2, c: 3 } }, '{"a":{"c":3,"d":2},"b":1}'],
  ])('of %j is %s', (value, text) => {
    expect(canonicalJson(value)).toBe(text);
  });

  it('puts names in the order of their UTF-16 code units, digits as text', () => {
    expect(canonicalJson({ b: 0, B: 0, aa: 0, a: 0, 9: 0, 10: 0 })).toBe(
      '{"10":0,"9":0,"B":0,"a":0,"aa":0,"b":0}',
    );
  });

  it('does not depend on the order in which members were set', () => {
    expect(canonicalJson({ x: 1, y: 2 })).toBe(canonicalJson({ y: 2, x: 1 }));
  });

  it('leaves the form of Unicode text alone', () => {
    expect(canonicalJson('A\u030a')).toBe('"A\u030a"');
    expect(canonicalJson('\u00c5')).toBe('"\u00c5"');
  });

  it('takes an object without a prototype, and a name that objects inherit', () => {
    expect(canonicalJson(Object.assign(Object.create(null), { a: 1 }))).toBe('{"a":1}');
    expect(canonicalJson(JSON.parse('{"__proto__":1}'))).toBe('{"__proto__":1}');
  });

  it('takes one object in two places, which is no loop', () => {
    const shared = { a: 1 };
    expect(canonicalJson([shared, shared])).toBe('[{"a":1},{"a":1}]');
  });
});

const loop: Record<string, unknown> = { id: 'x' };
loop['self'] = [loop];
const sparse = [1, 2, 3];
delete sparse[1];

test.each([
  ['undefined', undefined, '$ is undefined'],
  ['an undefined member', { rows: [{ id: undefined }] }, '$.rows[0].id is undefined'],
  ['a hole in a list', sparse, '$[1] is undefined'],
  ['NaN', { values: [1, Number.NaN] }, '$.values[1] is NaN'],
  ['infinity', { a: Number.POSITIVE_INFINITY }, '$.a is Infinity'],
  ['negative infinity', [Number.NEGATIVE_INFINITY], '$[0] is -Infinity'],
  ['a high surrogate alone', { what: 'bolt \ud83d' }, '$.what has half a surrogate pair'],
  ['a low surrogate alone', ['\ude00'], '$[0] has half a surrogate pair'],
  ['half a pair in a name', { '\ud83d': 1 }, '$.\ud83d has half a surrogate pair'],
  ['a date', { on: new Date(0) }, '$.on is a Date, not plain data'],
  ['a map', new Map(), '$ is a Map, not plain data'],
  ['bytes', { root: Uint8Array.of(1) }, '$.root is an Uint8Array, not plain data'],
  ['a bigint', { minor: 1n }, '$.minor is a bigint'],
  ['a function', { toJSON: () => 'x' }, '$.toJSON is a function'],
  ['a symbol', [Symbol('x')], '$[0] is a symbol'],
  ['a symbol as a name', { [Symbol('x')]: 1 }, '$ has a symbol for a name'],
  ['an object inside itself', loop, '$.self[0] contains itself'],
])('%s is refused with its path', (_, value, message) => {
  expect(() => canonicalJson(value)).toThrow(new TypeError(message));
});
