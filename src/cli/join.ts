import { buildSite } from './build.ts';
import { noArguments } from './wrong-use.ts';

/** Builds the site from pages of projects that are all made already, by other runs with the same cache. */
export async function main(args: readonly string[]): Promise<number> {
  const wrong = noArguments('run join', args);
  return wrong ?? ((await buildSite({ joining: true })) === undefined ? 1 : 0);
}
