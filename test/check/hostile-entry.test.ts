import { describe, expect, test } from 'vitest';
import { problemsOf } from './content-folder.ts';

const ENTRY = 'press/entries/2025-04-13-the-ram-slides.mdx';

/** What is said of the sound entry with a text at its end. */
async function codes(text: string): Promise<string[]> {
  const problems = await problemsOf({ [ENTRY]: ['<Tally />', `<Tally />\n\n${text}`] });
  return problems.map(({ code }) => code);
}

describe('an entry that would run, load or send something is refused:', () => {
  test.each([
    ['<script>alert(1)</script>', 'component/html'],
    ['<script src="https://elsewhere.example/x.js" />', 'component/html'],
    ['<style>body {/* */}</style>', 'component/html'],
    ['<iframe src="https://elsewhere.example/" />', 'component/html'],
    ['<object data="x" />', 'component/html'],
    ['<form action="https://elsewhere.example/"><button>Go</button></form>', 'component/html'],
    ['<meta http-equiv="refresh" content="0;url=https://elsewhere.example/" />', 'component/html'],
    ['<base href="https://elsewhere.example/" />', 'component/html'],
    ['<svg><a href="javascript:alert(1)" /></svg>', 'component/html'],
    ['<a href="javascript:alert(1)">x</a>', 'component/html'],
    ['<video src="https://elsewhere.example/x.mp4" />', 'component/html'],
    ['<globalThis.process.exit />', 'component/html'],
    ['<svg:script />', 'component/html'],
    ['<$evil />', 'component/unknown'],
    ['<p onclick="alert(1)">x</p>', 'component/html-attribute'],
    ['<p style="position: fixed">x</p>', 'component/html-attribute'],
    ['<p set:html="x">y</p>', 'component/html-attribute'],
    ['<p id="top">x</p>', 'component/html-attribute'],
    ['<p {...globalThis}>x</p>', 'component/prop-value'],
    ['<p title={globalThis.name}>x</p>', 'component/prop-value'],
    ['<Spec of="ram-play" {...globalThis} />', 'component/unknown-prop'],
    ['<Spec of="ram-play" client:load />', 'component/unknown-prop'],
    ['{/* a */ globalThis.ran = 1 /* b */}', 'mdx/expression'],
    ['\u1fef{globalThis.ran = 1}\u1fef', 'mdx/expression'],
    ['export const ran = 1', 'mdx/import'],
    ['[x](javascript:alert)', 'link/scheme'],
    ['[x](JavaScript:alert)', 'link/address'],
    ['[x](javascript&colon;alert)', 'link/scheme'],
    ['[x](javascript://%0aalert)', 'link/address'],
    ['[x](vbscript:alert)', 'link/scheme'],
    ['[x](data:text/html,x)', 'link/scheme'],
    ['[x](//elsewhere.example/)', 'link/address'],
    ['[x][y]\n\n[y]: javascript:alert', 'link/scheme'],
    ['![x](https://elsewhere.example/x.png)', 'mdx/picture'],
    ['![x][y]\n\n[y]: https://elsewhere.example/x.png', 'mdx/picture'],
  ])('%j', async (text, code) => {
    const found = await codes(text);
    expect(found.length).toBeGreaterThan(0);
    expect(new Set(found)).toEqual(new Set([code]));
  });

  test('front matter whose end the renderer sees elsewhere', async () => {
    const found = await problemsOf({
      [ENTRY]: ['tells: [h-002, r-002]', 'tags: ["a\n+++ {globalThis.ran = 1}", b]'],
    });
    expect(found.map(({ code, line }) => `${line} ${code}`)).toEqual(['7 entry/front-matter-end']);
  });
});

test('plain HTML that only says what a text is stands in an entry', async () => {
  expect(
    await codes(
      'Press <kbd>Esc</kbd>, 5<sup>2</sup>, <abbr title="tensile">8.8</abbr>\n\n<details open>\n<summary lang="de">Mehr</summary>\n\nText\n\n</details>',
    ),
  ).toEqual([]);
});
