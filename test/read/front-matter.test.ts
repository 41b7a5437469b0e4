import { describe, expect, test } from 'vitest';
import { cutFrontMatter } from '../../src/read/front-matter.ts';

describe('cutFrontMatter', () => {
  test('keeps every line and column of the text below', () => {
    expect(cutFrontMatter('---\ntitle: T\n---\n\nText\n')).toEqual({
      frontMatter: 'title: T\n',
      rest: '   \n        \n   \n\nText\n',
    });
    expect(cutFrontMatter('---\r\na: b\r\n--- \r\nText')).toEqual({
      frontMatter: 'a: b\r\n',
      rest: '   \r\n    \r\n    \r\nText',
    });
  });

  test.each([
    ['---\ntitle: [a,\n--- {evil()}\n]\n---\n', 3],
    ['---\ntitle: a\nsummary: [a,\n+++ {evil()}\n]\n---\n', 4],
    ['---\na: b\n----\n', 3],
  ])('names the line of %j at which the renderer would start the text', (text, line) => {
    expect(cutFrontMatter(text)).toBe(line);
  });

  test.each(['', 'Text', '---\ntitle: T\n', '\n---\na: b\n---\n', '+++\na = 1\n+++\n'])(
    'finds none in %j',
    (text) => {
      expect(cutFrontMatter(text)).toBeUndefined();
    },
  );
});
