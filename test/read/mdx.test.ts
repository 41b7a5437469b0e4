import { describe, expect, it } from 'vitest';
import { readMdx } from '../../src/read/mdx.ts';

const FRONT_MATTER = '---\ntitle: T\n---\n\n';

/** The text of an entry from its fifth line on. */
const read = (text: string) => readMdx(FRONT_MATTER + text, 'e.mdx');
const components = (text: string) =>
  read(text).body.components.map(
    ({ name, line, column, props }) =>
      `${name} ${line}:${column}${props.map((prop) => ` ${prop.name} ${prop.line}:${prop.column}`).join('')}`,
  );
const literals = (text: string) =>
  read(text).body.components[0]?.props.map(({ literal }) => literal);
const problemsIn = (text: string) =>
  read(text).problems.map(({ line, column, code }) => `${line}:${column} ${code}`);

describe('a component in an entry', () => {
  it('has its place in the file, front matter counted', () => {
    expect(components('<Tally />')).toEqual(['Tally 5:1']);
    expect(components('Play: <Spec of="a" /> and <Spec of="b" />')).toEqual([
      'Spec 5:7 of 5:13',
      'Spec 5:27 of 5:33',
    ]);
  });

  it('has its properties’ places, over several lines', () => {
    const text = `<Hazard
  signal="WARNING"
  hazard="harm of a kind and
  harm of another"
  harm={["avoid it"]}
  avoid="stand back"
/>`;
    expect(components(text)).toEqual(['Hazard 5:1 signal 6:3 hazard 7:3 harm 9:3 avoid 10:3']);
  });

  it('is found inside another, in a list, in a table and in a footnote', () => {
    const text = `<AtTime at="0:40">see <Spec of="a" /></AtTime>

- item
  - <Spec of="b" />

| a |
| - |
| <Spec of="c" /> |

Text[^1].

[^1]: Read as <Spec of="d" />.
`;
    expect(components(text)).toEqual([
      'AtTime 5:1 at 5:9',
      'Spec 5:23 of 5:29',
      'Spec 8:5 of 8:11',
      'Spec 12:3 of 12:9',
      'Spec 16:15 of 16:21',
    ]);
  });

  it('in code is no component', () => {
    expect(components('`<Tally />`\n\n```\n<Spec of="a" />\n```\n')).toEqual([]);
  });
});

describe('a property’s value', () => {
  it('is a quoted text, a number, a flag, or a list of quoted texts', () => {
    expect(literals('<A a="x" b=\'y\' c={3} d={-0.5} e={true} f g={"z"} />')).toEqual([
      'x',
      'y',
      3,
      -0.5,
      true,
      true,
      'z',
    ]);
    expect(literals('<A a={["x", "y"]} b={[]} c={[ \'x\', ]} />')).toEqual([['x', 'y'], [], ['x']]);
  });

  it('may hold quotes, umlauts and brackets', () => {
    expect(literals('<A a="5/8&quot; bolt, 20 °C" b="{x} [y]" />')).toEqual([
      '5/8" bolt, 20 °C',
      '{x} [y]',
    ]);
  });

  it('is none where it would have to be computed', () => {
    expect(
      literals('<A a={x} b={1 + 1} c={`x`} d={{ x: 1 }} e={[x]} f={["x", 3]} g={f("x")} />'),
    ).toEqual(Array(7).fill(undefined));
    expect(literals('<A {...all} />')).toEqual([undefined]);
  });
});

describe('a link in an entry', () => {
  it('has its address and its place', () => {
    const { links } = read('The [play](spec:ram-play), see [x][1].\n\n[1]: part:gib\n').body;
    expect(links.map(({ url, line, column }) => `${url} ${line}:${column}`)).toEqual([
      'spec:ram-play 5:5',
      'part:gib 7:1',
    ]);
  });
});

describe('the words of an entry', () => {
  it('are those of its text, not of its front matter, code or components', () => {
    expect(
      read('Two *good* words — and\nthree.\n\n`code` <Tally /> [linked](spec:x)').body.words,
    ).toBe(6);
  });
});

describe('an entry is refused', () => {
  it('where it imports, exports or runs something', () => {
    expect(problemsIn('import x from "y"\n')).toEqual(['5:1 mdx/import']);
    expect(problemsIn('export const x = 1\n')).toEqual(['5:1 mdx/import']);
    expect(problemsIn('Sum {1 + 1}\n\n{process.exit()}\n')).toEqual([
      '5:5 mdx/expression',
      '7:1 mdx/expression',
    ]);
  });

  it('not for a comment', () => {
    expect(problemsIn('{/* to do */}\n\nText {/* here too */}\n')).toEqual([]);
  });

  it('where a program stands between two comments', () => {
    expect(problemsIn('{/* a */ process.exit() /* b */}\n')).toEqual(['5:1 mdx/expression']);
    expect(problemsIn('Text {/* a */}{/* b *//* c */}\n')).toEqual([]);
  });

  it('where it nests so deep that a parser would give up, and the process lives', () => {
    const deep = (open: string, close = '') =>
      problemsIn(`${open.repeat(20_000)}${close.repeat(20_000)}\n`);
    expect(deep('>')).toEqual([expect.stringMatching(/mdx\/too-deep$/)]);
    expect(deep('<p>', '</p>')).toEqual([expect.stringMatching(/mdx\/too-deep$/)]);
    for (const program of [`{${'('.repeat(20_000)}}`, `<p title={${'['.repeat(20_000)}} />`])
      expect(problemsIn(program)).toEqual(['1:1 mdx/too-deep']);
    expect(problemsIn('>'.repeat(50))).toEqual([]);
    expect(problemsIn('>'.repeat(70))).toEqual([expect.stringMatching(/^5:\d+ mdx\/too-deep$/)]);
  });

  it('with thousands of properties or components in the time their number takes', () => {
    const started = performance.now();
    const props = Array.from({ length: 5_000 }, (_, index) => `a${index}="b"`).join(' ');
    expect(read(`<Spec ${props} />`).body.components[0]?.props).toHaveLength(5_000);
    expect(read(`x ${'<Spec of="b" /> '.repeat(5_000)}`).body.components).toHaveLength(5_000);
    expect(performance.now() - started).toBeLessThan(15_000);
  });

  it('not for being long', () => {
    expect(
      problemsIn('A (long) entry, with (many) "signs": {/* and a comment */}\n\n'.repeat(500)),
    ).toEqual([]);
  });

  it('where its MDX breaks, at that line', () => {
    expect(problemsIn('Fine.\n\nUnder <5 mm\n')).toEqual(['7:7 mdx/broken']);
    expect(problemsIn('Fine.\n\n<AtTime at="1:00">\n')).toEqual(['7:1 mdx/broken']);
    expect(problemsIn('Fine.\n\nText </Spec>\n')).toEqual(['7:6 mdx/broken']);
    expect(problemsIn('Fine.\n\nA } is text, a { is not\n')).toHaveLength(1);
  });

  it('where a picture stands other than as a photo', () => {
    expect(problemsIn('![Ram][ram]\n\n[ram]: https://elsewhere.example/ram.jpg')).toEqual([
      '5:1 mdx/picture',
    ]);
    expect(problemsIn('![Ram](ram.jpg)\n\nText <img src="x" />')).toEqual([
      '5:1 mdx/picture',
      '7:6 mdx/picture',
    ]);
  });
});
