import { execFile } from 'node:child_process';
import { mkdir, mkdtemp, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { availableParallelism, tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { parseArgs, promisify } from 'node:util';
import sharp from 'sharp';
import { FORMATS, type PhotoManifest } from '../photo/manifest.ts';
import { WIDTHS } from '../photo/recipe.ts';
import { type AstroPicture, writeAstroProject } from './photo-astro.ts';
import { likeness } from './photo-likeness.ts';
import { writePhotoProject } from './photo-project.ts';
import { writeOriginals } from './photo-set.ts';

const HELP = `npm run bench -- photos [--count 60] [--against 10] [--like 4] [--many 3000] [--seed 1] [--from FOLDER]

Derives 12-megapixel originals by this site's means and by Astro's own picture pipeline, and prints speed, bytes, likeness and memory.
  --count    originals that are derived by ours
  --against  how many of them Astro derives, twice: at its defaults and at our encoder settings
  --like     how many of these are compared with their originals (SSIM)
  --many     photos of the project that is built again with nothing changed
  --from     folder of real photos that the originals are cut from, instead of drawn ones
`;

interface Took {
  readonly seconds: number;
  /** Seconds of all cores together: on a machine that others use too it tells more than the clock. */
  readonly cpu: number;
  readonly megabytes: number;
}

/** Files of one contender by `photo width format`. */
type Files = ReadonlyMap<string, string>;

/** Measures the photo pipeline against Astro's own, in fresh temporary folders. */
export async function benchPhotos(args: readonly string[]): Promise<number> {
  const options = readOptions(args);
  if (options === undefined) {
    console.error(HELP);
    return 2;
  }
  const folder = await mkdtemp(join(tmpdir(), 'witnessmark-bench-photos-'));
  try {
    console.log(`Node ${process.versions.node}, ${availableParallelism()} cores\n`);
    await compare(folder, options);
    await timeMany(join(folder, 'many'), options.many);
    return 0;
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

type Options = NonNullable<ReturnType<typeof readOptions>>;

function readOptions(args: readonly string[]) {
  try {
    const { values } = parseArgs({
      args: [...args],
      options: {
        count: { type: 'string', default: '60' },
        against: { type: 'string', default: '10' },
        like: { type: 'string', default: '4' },
        many: { type: 'string', default: '3000' },
        seed: { type: 'string', default: '1' },
        from: { type: 'string' },
      },
    });
    const { count, against, like, many, seed, from } = values;
    const [all, some, few] = [Number(count), Number(against), Number(like)];
    if (!(few >= 1 && some >= few && all >= some)) return undefined;
    return { count: all, against: some, like: few, many: Number(many), seed: Number(seed), from };
  } catch {
    return undefined;
  }
}

async function compare(folder: string, options: Options): Promise<void> {
  const ours = join(folder, 'ours');
  const photos = join(ours, 'content/bench/photos');
  const names = await writeOriginals(photos, options);
  await writePhotoProject(join(ours, 'content'), names);
  const some = names.slice(0, options.against);

  const cold = await run('ours', ours);
  const warm = await run('ours', ours);
  const rate = options.count / cold.seconds;
  tell('ours, cold', `${rate.toFixed(2)} a second`, 'at least 3');
  tell('  seconds of one core for each', (cold.cpu / options.count).toFixed(2));
  tell('ours, cold, memory at the most', `${cold.megabytes.toFixed(0)} MB`, 'at most 700 MB');
  tell('ours, nothing changed', `${warm.seconds.toFixed(2)} s`);

  const own = await describe(await ourFiles(ours, some), photos, options);
  tell('ours, likeness', own.likeness.toFixed(4));
  for (const sameEncoders of [false, true]) {
    const name = sameEncoders ? 'Astro, our encoder settings' : 'Astro, its defaults';
    const place = join(folder, sameEncoders ? 'astro-same' : 'astro');
    await writeAstroProject(place, { photos: some.map((one) => join(photos, one)), sameEncoders });
    const took = await run('astro', place);
    const theirs = await describe(await astroFiles(place), photos, options);
    const theirRate = options.against / took.seconds;
    tell(name, `${theirRate.toFixed(2)} a second, ${took.megabytes.toFixed(0)} MB`);
    const byClock = `${(rate / theirRate).toFixed(1)} times`;
    const byCores = took.cpu / options.against / (cold.cpu / options.count);
    tell('  ours is faster by the clock', byClock, `at least ${sameEncoders ? 1.3 : 8}`);
    tell('  and by seconds of one core', `${byCores.toFixed(1)} times`);
    tell(
      '  its likeness, and ours less',
      `${theirs.likeness.toFixed(4)}, ${(theirs.likeness - own.likeness).toFixed(4)}`,
      'at most 0.005',
    );
    tell(
      '  our bytes more by',
      `${((own.bytes / theirs.bytes - 1) * 100).toFixed(1)} %`,
      'at most 15 %',
    );
    for (const format of FORMATS)
      tell(
        `    ${format}: likeness less, bytes more`,
        `${((theirs.by[format]?.likeness ?? 0) - (own.by[format]?.likeness ?? 0)).toFixed(4)}, ${(((own.by[format]?.bytes ?? 0) / (theirs.by[format]?.bytes ?? 1) - 1) * 100).toFixed(1)} %`,
      );
  }
}

interface Described {
  readonly bytes: number;
  readonly likeness: number;
  readonly by: Readonly<Record<string, { bytes: number; likeness: number }>>;
}

/** Bytes of all files, and mean likeness of those of the first photos. */
async function describe(files: Files, photos: string, { like }: Options): Promise<Described> {
  const by: Record<string, { bytes: number; likeness: number }> = {};
  for (const format of FORMATS) {
    const mine = [...files].filter(([key]) => key.endsWith(format));
    const sizes = await Promise.all(mine.map(async ([, file]) => (await stat(file)).size));
    const likes: number[] = [];
    for (const [key, file] of mine.slice(0, like * WIDTHS.length))
      likes.push(await likeness(join(photos, key.split(' ')[0] ?? ''), file));
    by[format] = { bytes: sum(sizes), likeness: sum(likes) / likes.length };
  }
  const all = Object.values(by);
  return {
    bytes: sum(all.map(({ bytes }) => bytes)),
    likeness: sum(all.map((one) => one.likeness)) / all.length,
    by,
  };
}

const sum = (numbers: readonly number[]) => numbers.reduce((total, one) => total + one, 0);

async function ourFiles(folder: string, names: readonly string[]): Promise<Files> {
  const listed = JSON.parse(
    await readFile(join(folder, 'work/photos.json'), 'utf8'),
  ) as PhotoManifest;
  const found = names.flatMap((name) =>
    (listed[`bench/${name}`]?.sizes ?? []).flatMap(({ width, files }) =>
      FORMATS.map(
        (format) =>
          [
            `${name} ${width} ${format}`,
            join(folder, 'work/public/photos', files[format]),
          ] as const,
      ),
    ),
  );
  return new Map(found);
}

async function astroFiles(folder: string): Promise<Files> {
  const listed = JSON.parse(
    await readFile(join(folder, 'dist/list.json'), 'utf8'),
  ) as AstroPicture[];
  const keyed = listed.map(
    ({ photo, width, format, file }) =>
      [`${photo} ${width} ${format}`, join(folder, 'dist', file)] as const,
  );
  return new Map(keyed.sort(([a], [b]) => (a < b ? -1 : 1)));
}

/** Photos of few pixels, but in all widths: once all are derived, only their number counts. */
async function timeMany(folder: string, count: number): Promise<void> {
  if (!(count > 0)) return;
  const photos = join(folder, 'content/bench/photos');
  await mkdir(photos, { recursive: true });
  const names = Array.from({ length: count }, (_, index) => `m${index}.jpg`);
  for (const [index, name] of names.entries()) {
    const background = `#${(index * 4099 + 0x100000).toString(16).slice(-6)}`;
    const create = { width: 1920, height: 16, channels: 3, background } as const;
    // Two colours may give one JPEG; bytes after the end keep the files apart.
    const jpeg = await sharp({ create }).jpeg().toBuffer();
    await writeFile(join(photos, name), Buffer.concat([jpeg, Buffer.from(String(index))]));
  }
  await writePhotoProject(join(folder, 'content'), names);
  await run('ours', folder);
  const { seconds, megabytes } = await run('ours', folder);
  tell(
    `ours, ${count} photos, nothing changed`,
    `${seconds.toFixed(2)} s, ${megabytes.toFixed(0)} MB`,
    'at most 2 s',
  );
}

async function run(who: 'ours' | 'astro', folder: string): Promise<Took> {
  const { stdout } = await promisify(execFile)(
    process.execPath,
    [resolve('src/bench/photo-contender.ts'), who, folder],
    { env: { ...process.env, NODE_ENV: 'production' }, maxBuffer: 64_000_000 },
  );
  return JSON.parse(stdout.trim().split('\n').at(-1) ?? '') as Took;
}

function tell(what: string, value: string, target?: string): void {
  console.log(`${what.padEnd(44)}${value.padStart(22)}${target ? `   target ${target}` : ''}`);
}
