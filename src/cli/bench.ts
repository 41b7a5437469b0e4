import { contentCommand } from '../bench/content/command.ts';
import { benchLedger } from '../bench/ledger.ts';
import { benchPhotos } from '../bench/photos.ts';
import { benchSite } from '../bench/site.ts';

/** Times check and build of sites of several sizes; or of a made-up ledger, or the making of photos; or only writes made-up content. */
export async function main(args: readonly string[]): Promise<number> {
  const [what, ...rest] = args;
  if (what === 'photos') return benchPhotos(rest);
  if (what === 'ledger') return benchLedger();
  if (what === 'content') return contentCommand(rest);
  return benchSite(args);
}
