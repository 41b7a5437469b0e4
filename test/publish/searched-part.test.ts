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

  test('has tags without attributes, whatever stands in these', () => {
    expect(partOf('<p class="a" title="x > y">1 &lt; 2</p><br><img alt="no"/>')).toBe(
      '<p>1 &lt; 2</p><br><img>',
    );
  });

  test('keeps cells and rows apart that nothing else keeps apart', () => {
    const words = partOf('<tr id="r-5"><th>Row</th><th>Date</th><td>r-5</td></tr><b id="x">y</b>');
    expect(words.replaceAll(/<[^>]*>/g, '')).toBe(' Row Date r-5  y');
  });

  test('of a page without a main part is our mistake', () => {
    expect(() => searchedPart('<p>nothing</p>', '')).toThrow('main part');
  });
});
