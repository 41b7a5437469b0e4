// Makes the published sizes of every photo of a content folder with sharp alone, in a process of its own: what the work costs at the least.
import { mkdir, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { FORMATS } from '../photo/manifest.ts';
import { ENCODERS, WIDTHS } from '../photo/recipe.ts';

const [content = '', out = ''] = process.argv.slice(2);
await mkdir(out, { recursive: true });
const files = (await readdir(content, { recursive: true })).filter((file) =>
  /[\\/]photos[\\/].*\.jpe?g$/i.test(file),
);
for (const [index, file] of files.entries()) {
  const upright = sharp(join(content, file)).autoOrient();
  await Promise.all(
    WIDTHS.flatMap((width) =>
      FORMATS.map((format) =>
        upright
          .clone()
          .resize({ width, withoutEnlargement: true })
          .toFormat(format, ENCODERS[format])
          .toFile(join(out, `${index}-${width}.${format}`)),
      ),
    ),
  );
}
console.log(JSON.stringify({ photos: files.length }));
