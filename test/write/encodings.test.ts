import { describe, expect, it } from 'vitest';
import { inContentFolder } from '../check/content-folder.ts';
import { soundFiles } from '../check/sound-files.ts';
import { addRows, bytesBelow, costRow, hoursRow, partRow, refused } from './press-ledger.ts';

const text = (file: string) => String(soundFiles[file]).replace('gib', 'gíb');
const encodings: Record<string, (content: string) => Uint8Array> = {
  'UTF-16 with a mark': (content) => Buffer.from(`\ufeff${content}`, 'utf16le'),
  'UTF-16 without a mark': (content) => Buffer.from(content, 'utf16le'),
  'UTF-16, the other way round': (content) => Buffer.from(`\ufeff${content}`, 'utf16le').swap16(),
  'Latin-1': (content) =>
    Buffer.from(`${content}${content.endsWith('\n') ? '' : '\n'}`.replace('gíb', 'gíb'), 'latin1'),
};

describe('a file that is not UTF-8', () => {
  for (const [name, encode] of Object.entries(encodings))
    for (const [file, row] of [
      ['press/ledger/costs.csv', costRow('Wire')],
      ['press/ledger/parts.yaml', partRow('Ram')],
    ] as const)
      it(`is refused in ${name}, and nothing is written: ${file}`, () =>
        inContentFolder({ [file]: encode(text(file)) }, async (content) => {
          const before = await bytesBelow(content);
          const told = await refused(addRows(content, hoursRow('Screw in'), row));
          expect(told.join('\n')).toMatch(
            new RegExp(`^${file}:\\d+:\\d+ the file is not UTF-8: `, 'm'),
          );
          expect(await bytesBelow(content)).toEqual(before);
        }));
});
