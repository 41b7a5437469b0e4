import { preview } from 'astro';
import { siteDir } from '../site/folders.ts';
import { buildSite } from './build.ts';
import { noArguments } from './wrong-use.ts';

/** Checks and builds the site, then serves it on a free port and prints the address. */
export async function main(args: readonly string[]): Promise<number> {
  const wrong = noArguments('start', args);
  if (wrong) return wrong;
  const built = await buildSite();
  if (built === undefined) return 1;

  process.env.WITNESSMARK_OUT = siteDir;
  const server = await preview({ logLevel: 'error' });
  const path = new URL(built.address).pathname;
  console.log(`\nOpen  http://localhost:${server.port}${path}\nStop with Ctrl+C.`);
  await server.closed();
  return 0;
}
