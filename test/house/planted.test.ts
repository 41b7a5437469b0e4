import { describe, expect, test } from 'vitest';
import { astroOutside } from './astro-rooms.ts';
import { arithmeticOf } from './component-rules.ts';
import { cyclesOf } from './cycles.ts';
import { LONGEST, longFiles } from './long-files.ts';
import { offTheMap, readMap } from './map.ts';

// A made-up house in which each rule is broken: a rule that sees nothing can't look green.
describe('planted', () => {
  const plant = (files: Record<string, string>) => new Map(Object.entries(files));
  const small = readMap(
    [
      '| `src/time` | days | nothing of ours |',
      '| `src/read` | files | time, types of book, `book/once.ts` |',
      '| `src/book` | all | all above |',
      '| `components` | pieces | book |',
    ].join('\n'),
  );

  test('a ring of two files, and one of three through types and a called import', () => {
    const two = plant({
      'src/a.ts': "import { b } from './b.ts';",
      'src/b.ts': "import {\n  a,\n} from './a.ts';",
    });
    expect(cyclesOf(two)).toEqual(['src/a.ts → src/b.ts → src/a.ts']);
    const three = plant({
      'src/x/a.ts': "import type { B } from '../y/b.ts';",
      'src/y/b.ts': "export { c } from './c.ts';",
      'src/y/c.ts': "const a = await import('../x/a.ts');",
    });
    expect(cyclesOf(three)).toEqual(['src/x/a.ts → src/y/b.ts → src/y/c.ts → src/x/a.ts']);
    expect(cyclesOf(plant({ 'src/a.ts': "import './a.ts';" }))).toEqual(['src/a.ts → src/a.ts']);
  });

  test('imports of Astro outside its rooms', () => {
    const planted = plant({
      'src/cost/a.ts': "import type { APIRoute } from 'astro';",
      'src/cost/b.ts': "import { getImage } from 'astro:assets';",
      'src/cost/c.ts': "const mdx = await import('@astrojs/mdx');",
      'src/cost/d.ts': "import Value from '../../components/Value.astro';",
      'src/cost/e.ts': "import { astronomy } from './astronomy.ts';",
      'src/pages/f.ts': "import type { APIRoute } from 'astro';",
    });
    expect(astroOutside(planted)).toEqual([
      'src/cost/a.ts imports astro',
      'src/cost/b.ts imports astro:assets',
      'src/cost/c.ts imports @astrojs/mdx',
      'src/cost/d.ts imports components/Value.astro',
    ]);
  });

  test('imports that the map does not allow', () => {
    const planted = plant({
      'src/time/day.ts': "import { read } from '../read/read.ts';",
      'src/read/read.ts':
        "import type { Book } from '../book/book.ts';\nimport { once } from '../book/once.ts';",
      'src/read/more.ts': "import { book, type Book } from '../book/book.ts';",
      'src/book/book.ts':
        "import { day } from '../time/day.ts';\nimport { Piece } from '../../components/Piece.ts';",
      'src/book/once.ts': '',
      'src/attic/box.ts': '',
      'components/Piece.ts': "import { book } from '../src/book/book.ts';\nimport './Other.ts';",
      'components/Other.ts': '',
    });
    expect(offTheMap(planted, small)).toEqual([
      'src/attic is not on the map',
      'src/time/day.ts imports src/read/read.ts',
      'src/read/more.ts imports src/book/book.ts',
      'src/book/book.ts imports components/Piece.ts',
    ]);
  });

  test('a folder that stands in the map twice', () => {
    expect(() => readMap('| `src/a` | | all |\n| `src/b` `src/a` | | all |')).toThrow(
      'src/a stands in the map twice',
    );
  });

  test('a file with a line too many', () => {
    const lines = (count: number) => `${'x\n'.repeat(count)}`;
    expect(longFiles(plant({ a: lines(LONGEST), b: lines(LONGEST + 1) }))).toEqual([
      `b has ${LONGEST + 1} lines`,
    ]);
  });

  test('arithmetic in a component: in its head, in its markup, but not in its text', () => {
    const text = [
      '---',
      'const half = width / 2;',
      'let all = 0;',
      'for (const row of rows) all += row;',
      '---',
      '<p class="a/b">1 / 2 of {share * 100} % {`one / two`}</p>',
      '<style>p { width: calc(1px * 2) }</style>',
    ].join('\n');
    expect(arithmeticOf('components/A.astro', text)).toEqual([
      'components/A.astro: width / 2',
      'components/A.astro: all += row',
      'components/A.astro: share * 100',
    ]);
  });
});
