import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';

/** The content folder that everything is read from: `WITNESSMARK_CONTENT`, or `content` beside package.json. */
export const contentDir: string = resolve(process.env.WITNESSMARK_CONTENT ?? 'content');

/** Where the finished site goes: `WITNESSMARK_DIST`, or `dist`. */
export const siteDir: string = resolve(process.env.WITNESSMARK_DIST ?? 'dist');

/** Where derived files are kept between runs, and the bench page's phones: `WITNESSMARK_WORK`, or `.witnessmark`. No row of the builder's is only there. */
export const workDir: string = resolve(process.env.WITNESSMARK_WORK ?? '.witnessmark');

/** Where pictures are kept that take long to make, for another machine to take along: `WITNESSMARK_CACHE`, or a part of the work folder. */
export const cacheDir: string = resolve(process.env.WITNESSMARK_CACHE ?? join(workDir, 'cache'));

/** Says why the content folder can't be used, or nothing. */
export function contentDirProblem(): string | undefined {
  if (existsSync(contentDir)) return undefined;
  return `There is no folder ${contentDir}. Set WITNESSMARK_CONTENT to the folder that holds site.yaml.`;
}
