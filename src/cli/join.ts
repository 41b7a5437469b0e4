import { buildSite } from './build.ts';

/** Builds the site from pages of projects that are all made already, by other runs with the same cache. */
export async function main(): Promise<number> {
  return (await buildSite({ joining: true })) === undefined ? 1 : 0;
}
