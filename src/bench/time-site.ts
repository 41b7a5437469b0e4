import { cp, readdir, readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { contentDir } from '../site/folders.ts';
import { writeBareSite } from './bare-astro.ts';
import { appendHours, changeReading, leaveOneUnmarked } from './change-row.ts';
import { sizeNamed } from './content/size.ts';
import { writeContent } from './content/write.ts';
import { runCommand, runMeasured, type Took } from './run-measured.ts';

/** What a build took, with the seconds of its stages. */
export type Build = Took & { readonly stages: Readonly<Record<string, number>> };

/** All that is measured of one content folder. */
export interface SiteTimes {
  /** `S`, the content folder as it is, or the name of a made-up size. */
  readonly size: string;
  /** Records of the content folder. */
  readonly rows: number;
  readonly pages: number;
  /** Bytes of the built site. */
  readonly bytes: number;
  /** Seconds of reading, checking, making the book and working out its figures, in a process without a build. */
  readonly figures: Took & { readonly stages: Readonly<Record<string, number>> };
  readonly cold: Build;
  readonly warm: Build;
  readonly afterHours: Build;
  readonly afterReading: Build;
  readonly bare: Took & { readonly bytes: number };
  readonly sharp: Took;
}

/** Builds a content folder cold, warm and after one changed row, and a bare Astro site of as many pages; every build in a process of its own. */
export async function timeSite(
  size: string,
  folder: string,
  told: (what: string) => void,
): Promise<SiteTimes> {
  const content = join(folder, 'content');
  const madeUp = sizeNamed(size);
  if (madeUp === undefined) await cp(contentDir, content, { recursive: true });
  else await writeContent(content, madeUp);
  await leaveOneUnmarked(content);
  told('content is written');

  const { output, ...took } = await runMeasured(['src/bench/figures-contender.ts', content]);
  const { seconds: stages, rows, errors } = JSON.parse(output) as Figures;
  if (errors > 0) throw new Error(`the content has ${errors} errors`);
  told('figures');
  const build = (name: string) => timeBuild(folder, content, name).finally(() => told(name));
  const cold = await build('cold');
  const warm = await build('warm');
  await appendHours(content);
  const afterHours = await build('after-hours');
  await changeReading(content);
  const afterReading = await build('after-reading');
  const { pages, bytes } = await sizeOf(join(folder, 'dist'));

  const bareSite = join(folder, 'bare');
  await writeBareSite(bareSite, { content, pages });
  const bare = await runMeasured(['src/bench/bare-contender.ts', bareSite]);
  const { pages: barePages, bytes: bareBytes } = await sizeOf(join(bareSite, 'dist'));
  if (barePages !== pages) throw new Error(`bare Astro made ${barePages} pages of ${pages}`);
  told('bare Astro');
  const sharp = await runMeasured(['src/bench/sharp-contender.ts', content, join(folder, 'sharp')]);
  return {
    ...{ size, rows, pages, bytes, figures: { ...took, stages } },
    ...{ cold, warm, afterHours, afterReading },
    ...{ bare: { ...plain(bare), bytes: bareBytes }, sharp: plain(sharp) },
  };
}

interface Figures {
  readonly seconds: Readonly<Record<string, number>>;
  readonly rows: number;
  readonly errors: number;
}

async function timeBuild(folder: string, content: string, name: string): Promise<Build> {
  const times = join(folder, `${name}.json`);
  const took = await runCommand(['build'], {
    WITNESSMARK_CONTENT: content,
    WITNESSMARK_WORK: join(folder, 'work'),
    WITNESSMARK_DIST: join(folder, 'dist'),
    WITNESSMARK_TIMES: times,
  });
  return { ...plain(took), stages: JSON.parse(await readFile(times, 'utf8')) };
}

const plain = ({ seconds, cpu, peak }: Took): Took => ({ seconds, cpu, peak });

/** HTML pages of a built site, and the bytes of all its files. */
async function sizeOf(folder: string): Promise<{ pages: number; bytes: number }> {
  const files = await readdir(folder, { recursive: true, withFileTypes: true });
  const all = files.filter((file) => file.isFile());
  let bytes = 0;
  for (const { parentPath, name } of all) bytes += (await stat(join(parentPath, name))).size;
  return { pages: all.filter(({ name }) => name.endsWith('.html')).length, bytes };
}
