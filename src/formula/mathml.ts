import { escapeXml } from '../draw/svg.ts';
import type { Tree } from './tree.ts';

const BINDS: Readonly<Record<string, number>> = {
  '<': 0,
  '>': 0,
  '<=': 0,
  '>=': 0,
  '+': 1,
  '-': 1,
  '*': 2,
  '/': 2,
  neg: 1,
  '^': 4,
};

/**
 * A formula as MathML Core, presentation markup: fractions are stacked, roots and powers drawn.
 * `show` gives what stands for a name: its symbol, or its value as MathML.
 */
export function formulaMathml(result: string, tree: Tree, show: (name: string) => string): string {
  return `<math display="block"><mrow>${symbolMathml(result)}<mo>=</mo>${write(tree, show)}</mrow></math>`;
}

/** A name as a symbol: `W_f` and `x12` get a subscript, Greek letters their sign. */
export function symbolMathml(name: string): string {
  const match = /^([A-Za-z]+?)(?:_(\w+)|(\d+))?$/.exec(name);
  const [, stem = name, word, digits] = match ?? [];
  const letter = Object.hasOwn(GREEK, stem) ? (GREEK[stem] as string) : stem;
  const short = /^([A-Z])([a-z]{1,2})$/.exec(stem);
  if (!word && !digits && short) return `<msub><mi>${short[1]}</mi><mi>${short[2]}</mi></msub>`;
  const symbol = `<mi>${escapeXml(letter)}</mi>`;
  const subscript = word ?? digits;
  return subscript === undefined
    ? symbol
    : `<msub>${symbol}<mi>${escapeXml(subscript)}</mi></msub>`;
}

const GREEK: Readonly<Record<string, string>> = {
  pi: 'π',
  alpha: 'α',
  beta: 'β',
  eta: 'η',
  mu: 'μ',
  rho: 'ρ',
  sigma: 'σ',
  theta: 'θ',
  omega: 'ω',
  phi: 'φ',
  g: 'g',
};

function write(tree: Tree, show: (name: string) => string): string {
  if (tree.type === 'number') return `<mn>${tree.value}</mn>`;
  if (tree.type === 'name') return show(tree.name);
  const [first, second] = tree.args as [Tree, Tree];
  switch (tree.name) {
    case '/':
      return `<mfrac><mrow>${write(first, show)}</mrow><mrow>${write(second, show)}</mrow></mfrac>`;
    case '^':
      return `<msup><mrow>${base(first, show)}</mrow><mrow>${write(second, show)}</mrow></msup>`;
    case 'sqrt':
      return `<msqrt>${write(first, show)}</msqrt>`;
    case 'abs':
      return `<mrow><mo>|</mo>${write(first, show)}<mo>|</mo></mrow>`;
    case 'neg':
      return `<mrow><mo>−</mo>${bound(first, 3, show)}</mrow>`;
    case '*':
      return `<mrow>${bound(first, 2, show)}<mo>·</mo>${bound(second, 3, show)}</mrow>`;
    case '+':
    case '-':
      return `<mrow>${bound(first, 1, show)}<mo>${tree.name === '-' ? '−' : '+'}</mo>${bound(second, 2, show)}</mrow>`;
    case '<':
    case '>':
    case '<=':
    case '>=':
      return `<mrow>${write(first, show)}<mo>${escapeXml(tree.name)}</mo>${write(second, show)}</mrow>`;
    default:
      return `<mrow><mi>${tree.name}</mi><mo>(</mo>${tree.args.map((arg) => write(arg, show)).join('<mo>,</mo>')}<mo>)</mo></mrow>`;
  }
}

/** An operand, in parentheses when its own operator binds less than is needed here. A fraction is its own bracket. */
function bound(tree: Tree, needed: number, show: (name: string) => string): string {
  const own = tree.type === 'call' && tree.name !== '/' ? (BINDS[tree.name] ?? 9) : 9;
  const inner = write(tree, show);
  return own < needed ? `<mrow><mo>(</mo>${inner}<mo>)</mo></mrow>` : inner;
}

/** What is raised to a power: in parentheses unless it is one sign or number. A fraction or a power of ten has none of its own. */
function base(tree: Tree, show: (name: string) => string): string {
  const inner = write(tree, show);
  const single =
    tree.type === 'call'
      ? !(tree.name in BINDS)
      : !inner.includes('<msup>') || inner.startsWith('<mrow><mo>(</mo>');
  return single ? inner : `<mrow><mo>(</mo>${inner}<mo>)</mo></mrow>`;
}

/** A number for a formula: five significant digits, powers of ten where it is very large or small. */
export function numberMathml(value: number): string {
  const text = Number(value.toPrecision(5));
  if (text < 0) return `<mrow><mo>(</mo><mo>−</mo>${numberMathml(-text)}<mo>)</mo></mrow>`;
  if (text === 0 || (text < 1e6 && text >= 1e-4)) return `<mn>${text}</mn>`;
  const [digits, exponent] = text.toExponential().split('e');
  return `<mrow><mn>${digits}</mn><mo>·</mo><msup><mn>10</mn><mrow>${signed(Number(exponent))}</mrow></msup></mrow>`;
}

function signed(value: number): string {
  return value < 0 ? `<mo>−</mo><mn>${-value}</mn>` : `<mn>${value}</mn>`;
}
