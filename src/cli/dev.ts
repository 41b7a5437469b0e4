import { dev } from 'astro';
import { openBook } from '../book/open.ts';
import type { Book } from '../book/types.ts';
import { derivePhotos } from '../photo/derive.ts';
import { refreshCrossChecks } from '../site/cross-checks.ts';
import { cacheDir, contentDir, contentDirProblem, workDir } from '../site/folders.ts';
import { aloneInWork } from '../site/work-lock.ts';
import { countProblems, describeProblems } from './print-problems.ts';
import { terminal } from './terminal.ts';
import { noArguments } from './wrong-use.ts';

/** Serves the site while you write: pages are made anew when an entry, a ledger file or a photo changes. Drafts are shown. */
export async function main(args: readonly string[]): Promise<number> {
  const wrong = noArguments('run dev', args);
  if (wrong) return wrong;
  const noDir = contentDirProblem();
  if (noDir) {
    console.error(noDir);
    return 2;
  }
  const book = await openBook(contentDir, { now: new Date(), drafts: true });
  if (book.problems.length > 0)
    console.log(
      `${describeProblems(book.problems, contentDir)}\n${countProblems(book.problems)}; records with problems are left out.`,
    );
  const derived = await aloneInWork('dev', () => derive(book), { waitMs: DERIVE_WAIT });
  if (derived) {
    console.error(derived.busy);
    return 1;
  }
  // Whatever the shell says: drafts and help while writing go by it.
  process.env.NODE_ENV = 'development';
  const server = await dev({ logLevel: 'warn' });
  const path = new URL(book.site?.address ?? 'https://site.invalid/').pathname;
  console.log(`\nOpen  http://localhost:${server.address.port}${path}\nStop with Ctrl+C.`);
  await new Promise(() => {});
  return 0;
}

/** How long one waits for a build that makes the same files, at the start. */
const DERIVE_WAIT = 15_000;

async function derive(book: Book): Promise<void> {
  await derivePhotos(book, { contentDir, workDir, cacheDir }, { listener: terminal });
  await refreshCrossChecks(book.projects);
}
