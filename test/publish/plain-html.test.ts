import { describe, expect, test } from 'vitest';
import { entryOfPage, plainHtml } from '../../src/publish/plain-html.ts';
import { wordsOf } from '../../src/words/words.ts';

const PAGE = 'https://shed.example/press/log/2025-04-13-the-ram-slides/';
const SEEN = { address: PAGE, words: wordsOf('en') };
const plain = (html: string) => plainHtml(html, SEEN);

describe('plainHtml', () => {
  test.each([
    ['a script', 'a<script>alert(1)</script>b', 'ab'],
    ['a style', '<style>p{}</style><p style="color:red" class="x" id="y">a</p>', '<p>a</p>'],
    [
      'a handler',
      '<p onclick="x()">a</p><img src="/a.webp" onerror="x()">',
      /<p>a<\/p><img src="[^"]*">$/,
    ],
    ['a frame', '<iframe src="https://other.example/"></iframe>', ''],
    ['a form', '<form action="/x"><button>go</button></form>', ''],
    ['a comment', 'a<!-- b -->c', 'ac'],
    ['an address that runs', '<a href="javascript:x()">a</a>', 'a'],
    ['one that runs, written another way', '<a href=" JaVa\nScript:x()">a</a>', 'a'],
    ['a picture made of data', '<img src="data:image/svg+xml,<svg/>">', ''],
    ['what is hidden from readers', '<p>a<span aria-hidden="true">b</span></p>', '<p>a</p>'],
    ['a script in a drawing', '<svg><script>x()</script></svg>', /Drawing on the page/],
  ])('lets no %s through', (_, html, expected) => {
    expect(plain(html)).toEqual(
      typeof expected === 'string' ? expected : expect.stringMatching(expected),
    );
  });

  test('gives every address whole, seen from the page', () => {
    expect(plain('<a href="#fn-1">1</a> <a href="../x/">x</a> <img src="/p.webp" alt="p">')).toBe(
      `<a href="${PAGE}#fn-1">1</a> <a href="https://shed.example/press/log/x/">x</a> <img src="https://shed.example/p.webp" alt="p">`,
    );
  });

  test('opens what readers of feeds do not know, keeps all that is in it, and sets a hazard note apart', () => {
    expect(
      plain(
        '<aside class="hazard"><p>WARNING</p><p>It falls</p></aside><section><h2>Then</h2></section>',
      ),
    ).toBe('<blockquote><p>WARNING</p><p>It falls</p></blockquote><h2>Then</h2>');
  });

  test('shows a folded number without its rows', () => {
    expect(
      plain('<details><summary><data value="5">5</data></summary><ul><li>r</li></ul></details>'),
    ).toBe('5');
  });

  test('puts a link to the page where a drawing stood, with its name', () => {
    expect(plain('<figure><svg aria-label="Before and after"><path/></svg></figure>')).toBe(
      `<figure><p><a href="${PAGE}">Drawing on the page: Before and after</a></p></figure>`,
    );
  });

  test('writes a formula in one line', () => {
    expect(
      plain(
        '<math><mi>F</mi><mo>=</mo><mfrac><mi>a</mi><msup><mi>b</mi><mn>2</mn></msup></mfrac></math>',
      ),
    ).toBe('F=(a)/(b^2)');
  });

  test('shows the boxes of tasks as signs', () => {
    expect(
      plain(
        '<ul><li><input type="checkbox" checked> a</li><li><input type="checkbox"> b</li></ul>',
      ),
    ).toBe('<ul><li>☑  a</li><li>☐  b</li></ul>');
  });

  test('leaves text as text', () => {
    expect(plain('<p>5 &lt; 6 &amp;&amp; &lt;script&gt;</p>')).toBe(
      '<p>5 &lt; 6 &amp;&amp; &lt;script&gt;</p>',
    );
  });
});

test('entryOfPage takes the text of the entry without its head and without the page around it', () => {
  const page =
    '<!doctype html><main><article><header><h1>T</h1></header><p>a</p></article><p>b</p></main>';
  expect(entryOfPage(page, SEEN)).toBe('<p>a</p>');
  expect(entryOfPage('<!doctype html><p>b</p>', SEEN)).toBe('');
});
