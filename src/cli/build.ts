import { relative } from 'node:path';
import { parseArgs } from 'node:util';
import { finishSite } from '../build/finish-site.ts';
import { partStore } from '../build/keep-pages.ts';
import { clearLeftFiles } from '../build/left-files.ts';
import { NotBuilt } from '../build/not-built.ts';
import { askProcess } from '../build/own-process.ts';
import { makeProjectPages } from '../build/project-pages.ts';
import type { Ready } from '../build/ready.ts';
import { putBack } from '../build/replace-folder.ts';
import { clearScratch, inScratch } from '../build/scratch.ts';
import { takeLaps } from '../build/stages.ts';
import { endSearch } from '../build/write-search.ts';
import { cacheDir, contentDirProblem, siteDir, workDir } from '../site/folders.ts';
import { aloneInWork } from '../site/work-lock.ts';
import type { ReadyOptions } from './make-ready.ts';
import { plural } from './print-problems.ts';
import type { ReadyAnswer } from './ready-worker.ts';
import { tellFailure } from './tell-failure.ts';
import { tellWrongUse } from './wrong-use.ts';

const HELP = `npm run build [-- --verify]
npm run build -- --only PROJECT [--only PROJECT ...]

Checks the content folder and builds the site. Pages of a project that did not change are those of the last build.
  --verify   reads every original photo again, whatever its size and times say
  --only     makes the pages of some projects and leaves the site as it is, so that several machines can share the
             work: each makes its own into the folder WITNESSMARK_CACHE, and "npm run join" puts them together
Exit status: 0 built, 1 refused, 2 wrong use.
`;

/** How a site is built. */
export interface BuildOptions {
  readonly verify?: boolean;
  /** Makes the pages of these projects, and no site. */
  readonly only?: readonly string[] | undefined;
  /** Makes no pages of projects: all must be there. */
  readonly joining?: boolean;
}

const shown = relative(process.cwd(), siteDir) || siteDir;

/** Checks, then builds the site into `dist/`. A refused or broken build leaves the `dist/` of before as it was. */
export async function main(args: readonly string[]): Promise<number> {
  const options = readArguments(args);
  if (options === 'help') console.log(HELP);
  else if (options === undefined) console.error(HELP);
  if (typeof options !== 'object') return options === 'help' ? 0 : 2;
  return (await buildSite(options)) === undefined ? 1 : 0;
}

/** What of a built site whoever serves it has to know. */
export interface Built {
  /** Its public address. */
  readonly address: string;
}

/** Builds into a new folder and swaps it in. Returns undefined when it was refused. */
export async function buildSite(options: BuildOptions = {}): Promise<Built | undefined> {
  const noDir = contentDirProblem();
  if (noDir) return refuse(noDir);
  const done = await aloneInWork('build', async () => ({ built: await buildAlone(options) }), {
    sharesCache: options.only !== undefined,
  });
  return 'busy' in done ? refuse(`${done.busy}\nNothing was built.`) : done.built;
}

async function buildAlone(options: BuildOptions): Promise<Built | undefined> {
  const asItWas = `Nothing was built; ${shown} is as it was.`;
  try {
    await putBack(siteDir, workDir);
    await clearScratch();
    await clearLeftFiles(workDir);
    if (!options.only) await clearLeftFiles(cacheDir); // With it others may be writing there.
    return await buildOrThrow(options);
  } catch (error) {
    if (error instanceof NotBuilt) return refuse(`${ended(error.message)}${asItWas}`);
    return refuse(`The build broke: ${tellFailure(error) ?? (error as Error).message}\n${asItWas}`);
  } finally {
    await endSearch();
  }
}

async function buildOrThrow({
  verify = false,
  only,
  joining = false,
}: BuildOptions): Promise<Built> {
  const started = performance.now();
  return inScratch('shared', async (shared) => {
    const ready = await askReady({ verify, only, joining, shared });
    takeLaps(ready.stages);
    if (only) await makeProjectPages(ready, shared);
    else await finishSite(ready, shared);
    if (!only) await partStore.prune(ready.ids);
    console.log(toldOf(ready, only !== undefined, (performance.now() - started) / 1000));
    return { address: ready.site.address };
  });
}

async function askReady(options: ReadyOptions): Promise<Ready> {
  const answer = await askProcess<ReadyAnswer>('cli/ready-worker.ts', options);
  if ('refused' in answer) throw new NotBuilt(answer.refused);
  return answer.ready;
}

function toldOf({ ids, entries, missing }: Ready, partly: boolean, seconds: number): string {
  const took = `in ${seconds.toFixed(1)} s`;
  if (partly) return `Made the pages of ${plural(missing.length, 'project')}, ${took}.`;
  const anew = missing.length === 0 ? 'none' : missing.map(({ id }) => id).join(', ');
  const what = missing.length < ids.length ? `; made anew: ${anew}` : '';
  return `Built ${shown}: ${plural(ids.length, 'project')}, ${plural(entries, 'entry', 'entries')}, ${took}${what}.`;
}

function readArguments(args: readonly string[]): BuildOptions | 'help' | undefined {
  try {
    const { values } = parseArgs({
      args: [...args],
      options: {
        verify: { type: 'boolean', default: false },
        only: { type: 'string', multiple: true },
        help: { type: 'boolean', short: 'h' },
      },
    });
    return values.help ? 'help' : { verify: values.verify, only: values.only };
  } catch (error) {
    return tellWrongUse(error);
  }
}

/** A sentence, or lines, for another to follow. */
function ended(message: string): string {
  if (message.endsWith('\n')) return message;
  return /[.?!]$/.test(message) ? `${message} ` : `${message}. `;
}

function refuse(message: string): undefined {
  console.error(message);
  return undefined;
}
