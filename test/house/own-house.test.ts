import { readFileSync } from 'node:fs';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { astroOutside, isAstro, STARTERS } from './astro-rooms.ts';
import { importsOf, readCode, readTexts } from './code.ts';
import { arithmeticOf } from './component-rules.ts';
import { cyclesOf } from './cycles.ts';
import { LONGEST, longFiles } from './long-files.ts';
import { offTheMap, readMap } from './map.ts';

// What is planted there looks like imports, and is none.
const PLANTED = 'test/house/planted.test.ts';
const code = new Map(
  [...readCode('src', 'components', 'test')].filter(([file]) => file !== PLANTED),
);
const texts = readTexts('src', 'components', 'test');
const map = readMap(readFileSync('DEVELOPERS.md', 'utf8'));

describe('the code', () => {
  test('is read: all of its files, and every import of ours leads to a file', () => {
    expect(code.size).toBeGreaterThan(1000);
    const lost = [...code].flatMap(([file, text]) =>
      importsOf(file, text)
        .filter(({ to }) => /^(src|components|test)\/.*\.(ts|js|mjs|astro)$/.test(to))
        .filter(({ to }) => !code.has(to))
        .map(({ to }) => `${file}: ${to}`),
    );
    expect(lost).toEqual([]);
  });

  test('has the imports that the compiler finds in it', () => {
    const missed = [...code]
      .filter(([file]) => file.endsWith('.ts'))
      .flatMap(([file, text]) => {
        const found = new Set(importsOf(file, text).map(({ written }) => written));
        return ts
          .preProcessFile(text)
          .importedFiles.filter(({ fileName }) => !found.has(fileName))
          .filter(({ fileName }) => !text.includes(`declare module '${fileName}'`))
          .map(({ fileName }) => `${file}: ${fileName}`);
      });
    expect(missed).toEqual([]);
  });

  test('knows Astro only in the rooms that are for it', () => {
    expect(astroOutside(code)).toEqual([]);
    const idle = STARTERS.filter(
      (file) => !importsOf(file, code.get(file) ?? '').some(({ to }) => isAstro(to)),
    );
    expect(idle).toEqual([]);
  });

  test('has no ring of imports, types included', () => {
    expect(cyclesOf(code)).toEqual([]);
  });

  test('imports only what the map in DEVELOPERS.md allows', () => {
    expect(offTheMap(code, map)).toEqual([]);
    const gone = [...map.keys()].filter(
      (folder) => ![...texts.keys()].some((file) => file.startsWith(folder)),
    );
    expect(gone).toEqual([]);
  });

  test(`has no file of more than ${LONGEST} lines`, () => {
    expect(longFiles(texts)).toEqual([]);
  });

  test('has components that read no files and work nothing out', () => {
    const components = [...code].filter(([file]) => file.startsWith('components/'));
    const reading = components.flatMap(([file, text]) =>
      importsOf(file, text)
        .filter(({ to }) => to.startsWith('node:'))
        .map(({ to }) => `${file}: ${to}`),
    );
    expect(reading).toEqual([]);
    expect(components.flatMap(([file, text]) => arithmeticOf(file, text))).toEqual([]);
  });
});
