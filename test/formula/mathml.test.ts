import { type DefaultTreeAdapterTypes, parseFragment, serialize } from 'parse5';
import { describe, expect, test } from 'vitest';
import { cgHeightRaisedAxle } from '../../src/calc/cg-height-raised-axle.ts';
import { library } from '../../src/calc/library.ts';
import { makeReady } from '../../src/calc/work-out.ts';
import { formulaMathml, numberMathml, symbolMathml } from '../../src/formula/mathml.ts';
import { treeFrom } from './read-formula.ts';

/** A formula as text that a person can read: fractions as (…)/(…), powers as ^(…), roots as √(…). */
function spoken(mathml: string): string {
  const [math] = parseFragment(mathml).childNodes;
  return math ? say(math as DefaultTreeAdapterTypes.Element) : '';
}

function say(element: DefaultTreeAdapterTypes.ChildNode): string {
  if (element.nodeName === '#text') return (element as DefaultTreeAdapterTypes.TextNode).value;
  const parts = (element as DefaultTreeAdapterTypes.Element).childNodes.map(say);
  if (element.nodeName === 'mfrac') return `{${parts[0]}}/{${parts[1]}}`;
  if (element.nodeName === 'msup') return `${parts[0]}^{${parts[1]}}`;
  if (element.nodeName === 'msub') return `${parts[0]}_${parts[1]}`;
  if (element.nodeName === 'msqrt') return `√{${parts.join('')}}`;
  return parts.join('');
}

const shown = (text: string, names: readonly string[] = ['a', 'b', 'c']) =>
  spoken(formulaMathml('y', treeFrom(text, names), symbolMathml)).replace('y=', '');

describe('the three formulas that were looked at:', () => {
  test('a sum over a list', () => {
    expect(formulaMathml('y', treeFrom('(x1 + x2)/2', ['x1', 'x2']), symbolMathml)).toBe(
      '<math display="block"><mrow><mi>y</mi><mo>=</mo><mfrac>' +
        '<mrow><mrow><msub><mi>x</mi><mi>1</mi></msub><mo>+</mo><msub><mi>x</mi><mi>2</mi></msub></mrow></mrow>' +
        '<mrow><mn>2</mn></mrow></mfrac></mrow></math>',
    );
  });

  test('a root with a power and a Greek letter', () => {
    const tree = treeFrom('2*pi*sqrt(m_s^2/k_r)', ['m_s', 'k_r']);
    expect(formulaMathml('T', tree, symbolMathml)).toBe(
      '<math display="block"><mrow><mi>T</mi><mo>=</mo>' +
        '<mrow><mrow><mn>2</mn><mo>·</mo><mi>π</mi></mrow><mo>·</mo><msqrt><mfrac>' +
        '<mrow><msup><mrow><msub><mi>m</mi><mi>s</mi></msub></mrow><mrow><mn>2</mn></mrow></msup></mrow>' +
        '<mrow><msub><mi>k</mi><mi>r</mi></msub></mrow></mfrac></msqrt></mrow></mrow></math>',
    );
  });

  test('the height of the centre of gravity, with symbols', () => {
    const { tree } = makeReady(cgHeightRaisedAxle);
    expect(spoken(formulaMathml('y', tree, symbolMathml))).toBe(
      'y={R_f·W_f+R_r·W_r}/{W_f+W_r}+{L·(W_q−W_f)}/{(W_f+W_r)·tan(asin({H}/{L}))}',
    );
  });
});

test('every formula of the library is well nested, each element with the children it must have', () => {
  const children = new Map([
    ['mfrac', 2],
    ['msup', 2],
    ['msub', 2],
  ]);
  for (const calculation of library.values()) {
    const { tree } = makeReady(calculation, Math.max(calculation.many?.atLeast ?? 0, 3));
    const written = formulaMathml('y', tree, symbolMathml);
    expect(serialize(parseFragment(written)), calculation.name).toBe(written);
    const walk = (node: DefaultTreeAdapterTypes.ChildNode): void => {
      if (!('childNodes' in node)) return;
      const wanted = children.get(node.nodeName);
      if (wanted !== undefined) expect(node.childNodes, written).toHaveLength(wanted);
      node.childNodes.forEach(walk);
    };
    parseFragment(written).childNodes.forEach(walk);
  }
});

describe('parentheses stand where leaving them out would say something else:', () => {
  test.each([
    ['a*(b + c)', 'a·(b+c)'],
    ['a*b + c', 'a·b+c'],
    ['a - (b - c)', 'a−(b−c)'],
    ['(a - b) - c', 'a−b−c'],
    ['a*(b/c)', 'a·{b}/{c}'],
    ['a/(b*c)', '{a}/{b·c}'],
    ['(a + b)^2', '(a+b)^{2}'],
    ['a^(b + c)', 'a^{b+c}'],
    ['(a^b)^c', '(a^{b})^{c}'],
    ['(a/b)^2', '({a}/{b})^{2}'],
    ['(-a)^2', '(−a)^{2}'],
    ['-a^2', '−a^{2}'],
    ['-(a + b)', '−(a+b)'],
    ['a*(-b)', 'a·(−b)'],
    ['a + (-b)', 'a+(−b)'],
    ['sqrt(a)^2', '√{a}^{2}'],
    ['abs(a - b)', '|a−b|'],
    ['min(a, b + c)', 'min(a,b+c)'],
    ['(a < b)*c', '(a<b)·c'],
  ])('%s is shown as %s', (text, want) => {
    expect(shown(text)).toBe(want);
  });
});

test('a name becomes a symbol with its index; nothing in it is taken for markup', () => {
  const said = ['L', 'Wf', 'W_LF', 'x12', 'mu', 'rho_s', 'TIR', 'constructor', 'η'];
  expect(said.map((name) => spoken(`<math>${symbolMathml(name)}</math>`))).toEqual([
    'L',
    'W_f',
    'W_LF',
    'x_12',
    'μ',
    'ρ_s',
    'TIR',
    'constructor',
    'η',
  ]);
  expect(symbolMathml('<b>')).toBe('<mi>&lt;b&gt;</mi>');
});

describe('numbers put in', () => {
  test.each([
    [0, '0'],
    [0.25, '0.25'],
    [123456, '123460'],
    [-0.02, '(−0.02)'],
    [2.07e11, '2.07·10^{11}'],
    [-2.07e11, '(−2.07·10^{11})'],
    [0.00001234567, '1.2346·10^{−5}'],
    [999_999.9, '1·10^{6}'],
  ])('%d reads %s', (value, want) => {
    expect(spoken(`<math>${numberMathml(value)}</math>`)).toBe(want);
  });

  test('keep a power apart from the power of ten of its base', () => {
    const tree = treeFrom('E^2*-b', ['E', 'b']);
    const put = (name: string) => numberMathml(name === 'E' ? 2.07e11 : -3);
    expect(spoken(formulaMathml('y', tree, put))).toBe('y=(2.07·10^{11})^{2}·(−(−3))');
    const negative = () => numberMathml(-2.07e11);
    expect(spoken(formulaMathml('y', tree, negative))).toContain('y=(−2.07·10^{11})^{2}·');
  });
});
