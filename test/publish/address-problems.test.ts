import { describe, expect, test } from 'vitest';
import { addressProblems } from '../../src/publish/address-problems.ts';
import { parseManifest, writeManifest } from '../../src/publish/manifest.ts';
import { addressNow, firstAddressOf, type Moved, redirects } from '../../src/publish/moved.ts';

const PAGES = new Set(['', 'press/', 'press/specs/', 'press/specs/ram-play/']);
const HASH = 'a'.repeat(64);

function problems(moved: readonly Moved[], published?: readonly string[]): string[] {
  return addressProblems({
    pages: PAGES,
    moved,
    placeOf: (index, field) => ({
      file: 'site.yaml',
      line: index + 1,
      column: field === 'from' ? 1 : 2,
    }),
    published: published && writeManifest(new Map(published.map((path) => [path, HASH]))),
  }).map(({ file, line, column, message, fix }) => `${file}:${line}:${column} ${message} → ${fix}`);
}

describe('a move', () => {
  test.each<[string, readonly Moved[]]>([
    ['to a page', [{ from: 'press/specs/play/', to: 'press/specs/ram-play/' }]],
    ['to a place on a page', [{ from: 'press/specs/play/', to: 'press/specs/#all' }]],
    [
      'of what has moved before',
      [
        { from: 'press/specs/a/', to: 'press/specs/b/' },
        { from: 'press/specs/b/', to: 'press/specs/ram-play/' },
      ],
    ],
    ['of a file', [{ from: 'press/old.csv', to: 'press/data/costs.csv' }]],
  ])('%s is in order', (_, moved) => {
    expect(problems(moved)).toEqual([]);
  });

  test('to a page that is not there is refused, with the nearest that is', () => {
    expect(problems([{ from: 'press/specs/play/', to: 'press/specs/ram-plya/' }])).toEqual([
      'site.yaml:1:2 moved: there is no page "press/specs/ram-plya/" → write "press/specs/ram-play/"',
    ]);
  });

  test('from a page that is still there is refused', () => {
    expect(problems([{ from: 'press/specs/', to: 'press/' }])).toEqual([
      'site.yaml:1:1 moved: "press/specs/" is still a page → take the move out',
    ]);
  });

  test('in a circle, or told twice, is refused', () => {
    const circle = [
      { from: 'a/', to: 'b/' },
      { from: 'b/', to: 'a/' },
    ];
    expect(problems(circle)).toHaveLength(2);
    expect(redirects({ moved: circle })).toEqual([]);
    const twice = [
      { from: 'a/', to: 'press/' },
      { from: 'a/', to: 'press/specs/' },
    ];
    expect(problems(twice)).toEqual([
      'site.yaml:2:1 moved: "a/" stands here twice → keep one of them',
    ]);
  });

  test('is followed to its end, and back to its beginning', () => {
    const moved = [
      { from: 'a/', to: 'b/' },
      { from: 'b/', to: 'press/' },
    ];
    expect([addressNow('a/', moved), addressNow('press/', moved)]).toEqual(['press/', 'press/']);
    expect([firstAddressOf('press/', moved), firstAddressOf('c/', moved)]).toEqual(['a/', 'c/']);
    expect(redirects({ moved })).toEqual([
      { from: 'a/', to: 'press/' },
      { from: 'b/', to: 'press/' },
    ]);
  });
});

describe('a page that was published', () => {
  test('may change, and files beside pages are not looked for', () => {
    expect(problems([], ['index.html', 'press/index.html', 'press/data/costs.csv'])).toEqual([]);
  });

  test('may not vanish: the fix is what to type', () => {
    expect(problems([], ['index.html', 'press/specs/ram-pla/index.html'])).toEqual([
      `published.txt:2:67 the page "press/specs/ram-pla/" was published, and is gone → bring it back, or say in site.yaml where it is now:
moved:
  - from: press/specs/ram-pla/
    to: press/specs/ram-play/`,
    ]);
  });

  test('may move', () => {
    const moved = [{ from: 'press/x/', to: 'press/' }];
    expect(problems(moved, ['press/x/index.html'])).toEqual([]);
  });

  test('in a file that was broken is a problem with its line', () => {
    const input = {
      pages: PAGES,
      moved: [],
      placeOf: () => ({ file: 'site.yaml', line: 1, column: 1 }),
    };
    const published = `${HASH}  index.html\n${HASH.slice(1)}  press/index.html\n`;
    expect(addressProblems({ ...input, published })[0]).toMatchObject({
      code: 'published/broken',
      line: 2,
    });
  });
});

test('a manifest is read back as it was written, in order of paths', () => {
  const manifest = new Map([
    ['b/index.html', HASH],
    ['a file.txt', 'b'.repeat(64)],
  ]);
  const text = writeManifest(manifest);
  expect(text).toBe(`${'b'.repeat(64)}  a file.txt\n${HASH}  b/index.html\n`);
  expect(parseManifest(text)).toEqual(manifest);
  expect(parseManifest(text.replaceAll('\n', '\r\n'))).toEqual(manifest);
});
