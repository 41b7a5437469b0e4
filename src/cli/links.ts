import { parseArgs } from 'node:util';
import { openBook } from '../book/open.ts';
import type { Entry, Project } from '../book/types.ts';
import { addressesOf } from '../publish/address.ts';
import { descriptionLines, momentLinks } from '../publish/video-links.ts';
import { suggest } from '../read/nearest.ts';
import { contentDir, contentDirProblem } from '../site/folders.ts';
import { asSentence } from './as-sentence.ts';
import { say } from './say.ts';
import { tellWrongUse } from './wrong-use.ts';

const HELP = `npm run links -- <entry> [--most 5000]

Prints lines for the description of an entry's video: time, label, address of the spec or part.
<entry> is its file name without .mdx, like 2025-08-03-four-scales. --most is the longest text the host takes, in characters.
Exit status: 0 printed, 1 no such entry, no video, or no room for the entry's own address, 2 wrong use.
`;

/** Prints ready-to-paste lines for a video's description. */
export async function main(args: readonly string[]): Promise<number> {
  const wanted = readArguments(args);
  if (wanted === undefined) return say(HELP, 2);
  const noDir = contentDirProblem();
  if (noDir) return say(noDir, 2);

  const book = await openBook(contentDir, { now: new Date(), drafts: true });
  const all = book.projects.flatMap((project) =>
    project.entries.map((entry) => ({ project, entry })),
  );
  const found = all.find(({ entry }) => entry.slug === wanted.entry);
  if (!found) {
    const hint = suggest(
      wanted.entry,
      all.filter(({ entry }) => entry.video).map(({ entry }) => entry.slug),
    );
    return say(`There is no entry "${wanted.entry}". ${asSentence(hint) ?? ''}`.trimEnd(), 1);
  }
  if (found.entry.video === undefined)
    return say(
      `The entry "${wanted.entry}" names no video. Add "video: https://…" and moments to its front matter.`,
      1,
    );
  return print(found, book.site?.address ?? 'https://site.invalid/', wanted.most);
}

function print(
  { project, entry }: { project: Project; entry: Entry },
  address: string,
  most: number,
): number {
  const to = addressesOf(address);
  const { text, left } = descriptionLines(
    momentLinks(project, entry, to),
    to.absolute(to.entry(project, entry)),
    most,
  );
  if (text.length > most)
    return say(
      `The address of the entry alone has ${text.length} characters; ${most} are too few.`,
      1,
    );
  console.log(text);
  if (left > 0) console.error(`\n${left} of the moments did not fit into ${most} characters.`);
  return 0;
}

function readArguments(args: readonly string[]): { entry: string; most: number } | undefined {
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: { most: { type: 'string', default: '5000' } },
    });
    const [entry] = positionals;
    const most = Number(values.most);
    return entry === undefined || positionals.length > 1 || !Number.isInteger(most) || most < 1
      ? undefined
      : { entry, most };
  } catch (error) {
    return tellWrongUse(error);
  }
}
