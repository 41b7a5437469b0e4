import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compile } from '../../src/formula/compile.ts';
import { formulaFunctions, isFormula, parseFormula } from '../../src/formula/parse.ts';
import { type Tree, treeOf } from '../../src/formula/tree.ts';

interface Written {
  readonly text: string;
  readonly worth: number;
}

const AT = { a: 1.7, b: 0.4, W_f: 3.2 };
const OPERATORS = {
  '+': (x: number, y: number) => x + y,
  '-': (x: number, y: number) => x - y,
  '*': (x: number, y: number) => x * y,
  '/': (x: number, y: number) => x / y,
  '^': (x: number, y: number) => x ** y,
  '<': (x: number, y: number) => Number(x < y),
  '>=': (x: number, y: number) => Number(x >= y),
};

/** A formula with parentheses everywhere, and what it is worth by JavaScript's own arithmetic. */
const { formula } = fc.letrec<{ formula: Written }>((tie) => ({
  formula: fc.oneof(
    { maxDepth: 5 },
    fc.constantFrom(...Object.entries(AT).map(([text, worth]) => ({ text, worth }))),
    fc.integer({ min: 0, max: 999 }).map((n) => ({ text: `${n / 100}`, worth: n / 100 })),
    fc
      .tuple(tie('formula'), fc.constantFrom('+', '-', '*', '/', '^', '<', '>='), tie('formula'))
      .map(([x, sign, y]) => ({
        text: `(${x.text}) ${sign} (${y.text})`,
        worth: OPERATORS[sign as '+'](x.worth, y.worth),
      })),
    fc
      .tuple(fc.constantFrom('sqrt', 'abs', 'sin', 'atan', 'exp'), tie('formula'))
      .map(([name, x]) => ({
        text: `${name}(${x.text})`,
        worth: Math[name as 'sqrt'](x.worth),
      })),
    fc.tuple(tie('formula'), tie('formula')).map(([x, y]) => ({
      text: `max(${x.text}, ${y.text})`,
      worth: Math.max(x.worth, y.worth),
    })),
    tie('formula').map(({ text, worth }) => ({ text: `-(${text})`, worth: -worth })),
  ),
}));

describe('a formula', () => {
  test('is worth what the same arithmetic is worth without it', () => {
    const names = Object.keys(AT);
    fc.assert(
      fc.property(formula, ({ text, worth }) => {
        const parsed = parseFormula(text, names);
        if (!isFormula(parsed)) throw new Error(`"${text}": ${parsed.wrong}`);
        const found = compile(treeOf(parsed), names)(Object.values(AT));
        expect(Object.is(found, worth) || found === worth, `${text} is ${found}`).toBe(true);
      }),
    );
  });

  test('is refused or is arithmetic, whatever the text', () => {
    const names = ['a', 'b'];
    const word = fc.constantFrom(
      ...['a', 'b', 'sqrt', 'max', 'import', 'constructor', '__proto__', 'e', 'i', 'true', 'NaN'],
      ...['+', '-', '*', '/', '^', '(', ')', ',', '<', '>=', '=', '==', '.', '[', ']', '{', '}'],
      ...[
        '"',
        "'",
        ';',
        ':',
        '?',
        '!',
        '%',
        '#',
        '&',
        '|',
        '~',
        ' ',
        '\n',
        '1',
        '2.5',
        '1e9',
        '0x',
      ],
      ...['to', 'in', 'mod', 'and', 'not', 'f(x)=', '=>', '`', '$', '\\', '²', 'µ', '\u2028'],
    );
    const texts = fc.oneof(
      fc.array(word, { maxLength: 12 }).map((words) => words.join('')),
      fc.array(word, { maxLength: 8 }).map((words) => words.join(' ')),
      fc.string({ unit: 'binary', maxLength: 20 }),
    );
    fc.assert(
      fc.property(texts, (text) => {
        const parsed = parseFormula(text, names);
        if (!isFormula(parsed)) {
          expect(parsed.wrong.length).toBeGreaterThan(3);
          return;
        }
        const tree = treeOf(parsed);
        for (const name of namesIn(tree)) expect(['a', 'b', 'pi', 'g_n']).toContain(name);
        for (const call of callsIn(tree))
          expect(['neg', ...Object.keys(formulaFunctions), ...'+-*/^<>', '<=', '>=']).toContain(
            call,
          );
        expect(compile(tree, names)([1, 2])).toBeTypeOf('number');
      }),
      { numRuns: 3000 },
    );
  });
});

function namesIn(tree: Tree): string[] {
  if (tree.type === 'name') return [tree.name];
  return tree.type === 'call' ? tree.args.flatMap(namesIn) : [];
}

function callsIn(tree: Tree): string[] {
  return tree.type === 'call' ? [tree.name, ...tree.args.flatMap(callsIn)] : [];
}
