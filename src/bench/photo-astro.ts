import { mkdir, symlink, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { FORMATS } from '../photo/manifest.ts';
import { ENCODERS, WIDTHS } from '../photo/recipe.ts';

/** One derived file of Astro's own picture pipeline. */
export interface AstroPicture {
  readonly photo: string;
  readonly format: string;
  readonly width: number;
  /** Address of the file in the built site. */
  readonly file: string;
}

const ENDPOINT = `import { getImage } from 'astro:assets';
const photos = import.meta.glob('../photos/*.jpg', { eager: true });
export async function GET() {
  const list = [];
  for (const [path, { default: src }] of Object.entries(photos))
    for (const format of ${JSON.stringify(FORMATS)})
      for (const width of ${JSON.stringify(WIDTHS)}) {
        const image = await getImage({ src, width, format });
        list.push({ photo: path.replace(/^.*\\//, ''), format, width, file: image.src });
      }
  return new Response(JSON.stringify(list));
}
`;

/** Writes an Astro project that derives the same sizes and formats of the same photos by Astro's own means, at its defaults or at our encoder settings. */
export async function writeAstroProject(
  folder: string,
  { photos, sameEncoders }: { photos: readonly string[]; sameEncoders: boolean },
): Promise<void> {
  const service = sameEncoders
    ? `image: { service: { entrypoint: 'astro/assets/services/sharp', config: ${JSON.stringify(ENCODERS)} } },`
    : '';
  await mkdir(join(folder, 'src/pages'), { recursive: true });
  await mkdir(join(folder, 'src/photos'));
  await symlink(resolve('node_modules'), join(folder, 'node_modules'));
  await writeFile(join(folder, 'package.json'), '{ "type": "module" }\n');
  await writeFile(
    join(folder, 'astro.config.mjs'),
    `export default { cacheDir: './cache', vite: { cacheDir: './cache/vite' }, ${service} };\n`,
  );
  await writeFile(join(folder, 'src/pages/list.json.ts'), ENDPOINT);
  for (const photo of photos)
    await symlink(photo, join(folder, 'src/photos', photo.replace(/^.*[\\/]/, '')));
}
