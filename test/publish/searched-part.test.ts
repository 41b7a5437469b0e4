import { describe, expect, test } from 'vitest';
import { searchedPart } from '../../src/publish/searched-part.ts';

const pageOf = (main: string) =>
  `<!DOCTYPE html><html><head><title>No</title></head><body><nav>No</nav><main id="content">${main}</main><footer>No</footer></body></html>`;
const partOf = (main: string, notes = '') =>
  searchedPart(pageOf(main), notes).replace(
    /^<html><body><main data-pagefind-body>(.*)<\/main><\/body><\/html>$/,
    '$1',
  );

describe('what is searched of a page', () => {
  test('is its main part, with the notes first', () => {
    expect(partOf('<h1>Axle</h1>', '<i data-pagefind-meta="kind:spec"></i>')).toBe(
      '<i data-pagefind-meta="kind:spec"></i><h1>Axle</h1>',
    );
  });

  test('has no drawings, however deep they go', () => {
    const drawing =
      '<svg role="img" aria-label="a > b"><svg x="1"><path d="M0 0"/></svg><svg/><text>9</text></svg>';
    expect(partOf(`<p>before</p>${drawing}<p>between</p>${drawing}<p>after</p>`)).toBe(
      '<p>before</p><p>between</p><p>after</p>',
    );
  });

  test('has of a working the line that opens it, and all of what else opens', () => {
    const working = (summary: string, rows: string) =>
      `<details class="working"><summary>${summary}</summary><div>${rows}</div></details>`;
    const group = '<details class="group" open><summary>May</summary><p>r-1</p></details>';
    expect(
      partOf(`<p>a ${working('3 h', `rows ${working('2 h', 'r-2')} more`)} b</p>${group}`),
    ).toBe(
      '<p>a <details><summary>3 h</summary> </details> b</p><details><summary>May</summary> <p>r-1</p></details>',
    );
    expect(partOf(`${working('1', 'x')}${working('2', 'y')}`)).toBe(
      '<details><summary>1</summary> </details><details><summary>2</summary> </details>',
    );
  });

  test('has tags without attributes, whatever stands in these', () => {
    expect(partOf('<p class="a" title="x > y">1 &lt; 2</p><br><img alt="no"/>')).toBe(
      '<p>1 &lt; 2</p><br><img>',
    );
  });

  test('keeps cells and rows apart that nothing else keeps apart', () => {
    const words = partOf('<tr id="r-5"><th>Row</th><th>Date</th><td>r-5</td></tr><b id="x">y</b>');
    expect(words.replaceAll(/<[^>]*>/g, '')).toBe(' Row Date r-5  y');
    const terms = partOf(
      '<dl><div><dt>Source</dt><dd>bought</dd></div><div><dt>Phase</dt></div></dl>',
    );
    expect(terms.replaceAll(/<[^>]*>/g, '')).toBe('Source bought Phase ');
  });

  test('of a page without a main part is our mistake', () => {
    expect(() => searchedPart('<p>nothing</p>', '')).toThrow('main part');
  });
});
