import { mkdir, readdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { randomStream } from '../measure/random.ts';

/** Size of an original, 12 megapixels. */
const [WIDTH, HEIGHT] = [4000, 3000];

/** A picture from which originals are cut, somewhat larger than they are. */
const BASE = { width: 4600, height: 3450 };

/** Detail of a photograph on each scale: width of a field of noise in pixels, and how far it swings. */
const OCTAVES = [
  [16, 30],
  [64, 22],
  [256, 14],
  [1000, 9],
  [2300, 6],
] as const;

/**
 * Writes so many different JPEG originals: windows, some mirrored, cut from three drawn pictures, or from the photos of a folder.
 * The same seed gives the same pictures.
 */
export async function writeOriginals(
  folder: string,
  { count, seed, from }: { count: number; seed: number; from: string | undefined },
): Promise<string[]> {
  await mkdir(folder, { recursive: true });
  const random = randomStream(seed).uniform;
  const bases = from
    ? await photosOf(from)
    : [await draw(random), await draw(random), await draw(random)];
  const names = Array.from(
    { length: count },
    (_, index) => `p${String(index).padStart(4, '0')}.jpg`,
  );
  for (const [index, name] of names.entries()) {
    const left = Math.floor(random() * (BASE.width - WIDTH));
    const top = Math.floor(random() * (BASE.height - HEIGHT));
    const jpeg = await sharp(bases[index % bases.length], { raw: { ...BASE, channels: 3 } })
      .extract({ left, top, width: WIDTH, height: HEIGHT })
      .flip(random() < 0.3)
      .flop(random() < 0.5)
      .jpeg({ quality: 90 })
      .toBuffer();
    await writeFile(join(folder, name), jpeg);
  }
  return names;
}

async function photosOf(folder: string): Promise<Buffer[]> {
  const files = (await readdir(folder)).filter((name) => /\.jpe?g$/i.test(name)).sort();
  return Promise.all(
    files.map((name) =>
      sharp(join(folder, name))
        .autoOrient()
        .resize({ ...BASE, fit: 'cover' })
        .toColourspace('srgb')
        .removeAlpha()
        .raw()
        .toBuffer(),
    ),
  );
}

/** Shapes with hard edges on a slope of colour, with noise on every scale over it. */
async function draw(random: () => number): Promise<Buffer> {
  const picture = await sharp(Buffer.from(shapes(random)))
    .removeAlpha()
    .blur(1.1)
    .raw()
    .toBuffer();
  for (const [width, swing] of OCTAVES) {
    const field = await noise(width, swing, random);
    for (let at = 0; at < picture.length; at++)
      picture[at] = Math.min(255, Math.max(0, (picture[at] ?? 0) + (field[at] ?? 128) - 128));
  }
  return picture;
}

function noise(width: number, swing: number, random: () => number): Promise<Buffer> {
  const height = Math.round((width * BASE.height) / BASE.width);
  const grains = Buffer.alloc(width * height * 3);
  for (let at = 0; at < grains.length; at++) grains[at] = 128 + (random() - 0.5) * 2 * swing;
  return sharp(grains, { raw: { width, height, channels: 3 } })
    .resize({ ...BASE, fit: 'fill', kernel: 'cubic' })
    .raw()
    .toBuffer();
}

function shapes(random: () => number): string {
  const tone = () => Math.floor(30 + random() * 190);
  const colour = () => `rgb(${tone()},${tone()},${tone()})`;
  const rectangles = Array.from({ length: 140 }, () => {
    const [x, y] = [random() * BASE.width, random() * BASE.height];
    const [width, height] = [40 + random() ** 2 * 1500, 20 + random() ** 2 * 900];
    return `<rect x="${x}" y="${y}" width="${width}" height="${height}" fill="${colour()}" stroke="#222" stroke-width="${random() * 8}" opacity="${0.4 + random() * 0.6}" transform="rotate(${random() * 90} ${x} ${y})"/>`;
  });
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${BASE.width}" height="${BASE.height}"><defs><linearGradient id="g" x2="1" y2="1"><stop stop-color="${colour()}"/><stop offset="1" stop-color="#3a3f44"/></linearGradient></defs><rect width="100%" height="100%" fill="url(#g)"/>${rectangles.join('')}</svg>`;
}
