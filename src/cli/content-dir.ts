import { existsSync } from 'node:fs';
import { resolve } from 'node:path';

/** The content folder: `WITNESSMARK_CONTENT`, or `content` beside package.json, where npm scripts run. */
export function contentDir(): string {
  return resolve(process.env.WITNESSMARK_CONTENT ?? 'content');
}

/** Says why a content folder can't be used, or nothing. */
export function contentDirProblem(dir: string): string | undefined {
  return existsSync(dir) ? undefined : `There is no folder ${dir}. Set WITNESSMARK_CONTENT to the folder that holds site.yaml.`;
}
