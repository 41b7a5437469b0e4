import { dev } from 'astro';
import { openBook } from '../book/open.ts';
import { derivePhotos } from '../photo/derive.ts';
import { workDir } from '../site/content-dir.ts';
import { contentDir, contentDirProblem } from './content-dir.ts';
import { countProblems, describeProblems } from './print-problems.ts';

/** Serves the site while you write: pages are made anew when an entry, a ledger file or a photo changes. Drafts are shown. */
export async function main(): Promise<number> {
  const dir = contentDir();
  const noDir = contentDirProblem(dir);
  if (noDir) {
    console.error(noDir);
    return 2;
  }
  const book = await openBook(dir, { now: new Date(), drafts: true });
  if (book.problems.length > 0) console.log(`${describeProblems(book.problems, dir)}\n${countProblems(book.problems)}; records with problems are left out.`);
  await derivePhotos(book, dir, workDir);
  const server = await dev({ logLevel: 'warn' });
  const path = new URL(book.site?.address ?? 'https://site.invalid/').pathname;
  console.log(`\nOpen  http://localhost:${server.address.port}${path}\nStop with Ctrl+C.`);
  await new Promise(() => {});
  return 0;
}
