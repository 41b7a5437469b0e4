import { describe, expect, test } from 'vitest';
import { parseFormula } from '../../src/formula/parse.ts';
import { worth } from './read-formula.ts';

const wrongOf = (text: string) => {
  const result = parseFormula(text, ['a', 'b']);
  return 'wrong' in result ? result.wrong : undefined;
};

describe('a formula is arithmetic:', () => {
  test.each([
    ['a + b*a', 8],
    ['(a + b)*a', 10],
    ['a - b - a', -3],
    ['a/b/a', 1 / 3],
    ['-a^2', -4],
    ['(-a)^2', 4],
    ['a^b^a', 512],
    ['2^-a', 0.25],
    ['a*-b', -6],
    ['+a', 2],
    ['1.5e3*a', 3000],
    ['sqrt(a*8) + abs(-b)', 7],
    ['min(a, b, 1) + max(a, b)', 4],
    ['exp(log(a))', 2],
    ['sin(pi/6)', 0.5],
    ['acos(0) - asin(1)', 0],
    ['atan(tan(1))', 1],
    ['g_n', 9.80665],
    ['(a < b) + (a >= b)*10', 1],
    ['a <= 2', 1],
    ['a > b', 0],
  ])('%s with a = 2 and b = 3 is %d', (text, value) => {
    expect(worth(text, { a: 2, b: 3 })).toBeCloseTo(value, 14);
  });

  test('names may have letters of any script, digits and underscores', () => {
    expect(worth('W_f1 + η', { W_f1: 1, η: 2 })).toBe(3);
  });

  test('a name of an input stands before a constant of that name', () => {
    expect(worth('pi*2', { pi: 3 })).toBe(6);
  });
});

describe('no formula is', () => {
  test.each([
    ['', 'it is empty'],
    ['c', 'unknown name "c"'],
    ['e', 'unknown name "e"'],
    ['i', 'unknown name "i"'],
    ['constructor', 'unknown name "constructor"'],
    ['__proto__', 'unknown name "__proto__"'],
    ['a(b)', 'unknown function "a"'],
    ['toString()', 'unknown function "toString"'],
    ['random()', 'unknown function "random"'],
    ['import(a)', 'unknown function "import"'],
    ['sqrt(a, b)', '"sqrt" does not take 2 values'],
    ['max()', '"max" does not take 0 values'],
    ['sqrt', 'unknown name "sqrt"'],
    ['a = 2', 'it is more than arithmetic'],
    ['f(x) = x', 'it is more than arithmetic'],
    ['a.b', 'it is more than arithmetic'],
    ['a < b < a', 'it is more than arithmetic'],
    ['a\nb', 'it is more than arithmetic'],
    ['a["b"]', '"[" is not arithmetic'],
    ['"a"', '""" is not arithmetic'],
    ["'a'", '"\'" is not arithmetic'],
    ['{a: 1}', '"{" is not arithmetic'],
    ['a ? b : a', '"?" is not arithmetic'],
    ['a; b', '";" is not arithmetic'],
    ['a!', '"!" is not arithmetic'],
    ['a # twice', '"#" is not arithmetic'],
    ['a == b', '"==" is not arithmetic'],
    ['a and b', '"and" is not arithmetic'],
    ['a to b', '"to" is not arithmetic'],
    ['a .* b', '".*" is not arithmetic'],
    ['true', '"true" is not a number'],
    ['NaN', '"NaN" is not a number'],
    ['1e999', '"Infinity" is not a number'],
    ['5 mm', 'unknown name "mm"'],
    ['a +', 'Unexpected end of expression (char 4)'],
    ['(a', 'Parenthesis ) expected (char 3)'],
  ])('%j: %s', (text, wrong) => {
    expect(wrongOf(text)).toBe(wrong);
  });

  test('a share in per cent, which would be one of what stands before it', () => {
    expect(wrongOf('a + 10%')).toBe('"%" is not arithmetic');
  });

  test('a product without its sign: 1/2 a could be a half of a, or 1 over 2a', () => {
    expect(wrongOf('1/2 a')).toBe('a "*" is missing in "1 / 2 a"');
    expect(wrongOf('a (b)')).toBe('unknown function "a"');
    expect(wrongOf('(a) b')).toBe('a "*" is missing in "(a) b"');
  });

  test.each([
    ['parentheses', (n: number) => `${'('.repeat(n)}a${')'.repeat(n)}`],
    ['minus signs', (n: number) => `${'-'.repeat(n)}a`],
    ['functions', (n: number) => `${'sqrt('.repeat(n)}a${')'.repeat(n)}`],
    ['a chain of sums', (n: number) => Array(n).fill('a').join(' + ')],
    ['a tower of powers', (n: number) => Array(n).fill('a').join('^')],
  ])('%s without end: it is refused, and nothing falls over', (_, text) => {
    expect(wrongOf(text(50))).toBeUndefined();
    for (const count of [1000, 20_000]) expect(wrongOf(text(count))).toBe('it is nested too deep');
  });
});

test('a text is never run: code in it leaves no trace', () => {
  const mark = 'witnessmarkWasHere';
  for (const text of [
    `globalThis.${mark} = 1`,
    `constructor.constructor("globalThis.${mark} = 1")()`,
    `eval("globalThis.${mark} = 1")`,
    `f() = ${mark}`,
    `a[${mark}=1]`,
  ])
    expect(wrongOf(text), text).toBeDefined();
  expect(mark in globalThis).toBe(false);
});
