// A process of its own that gets ready what a build goes on with, and ends: nothing of what it read takes memory while pages are made.

import { NotBuilt } from '../build/not-built.ts';
import { answerOnce } from '../build/own-process.ts';
import { comingProgram } from '../build/page-program.ts';
import { programKey } from '../build/part-key.ts';
import type { Ready } from '../build/ready.ts';
import { contentDir } from '../site/folders.ts';
import { makeReady, type ReadyOptions } from './make-ready.ts';

/** What it is answered with: what the build goes on with, or why there is no build. */
export type ReadyAnswer = { readonly ready: Ready } | { readonly refused: string };

await answerOnce(async (options: ReadyOptions): Promise<ReadyAnswer> => {
  const program = comingProgram(await programKey(contentDir));
  try {
    return { ready: await makeReady(options, program) };
  } catch (error) {
    if (error instanceof NotBuilt) return { refused: error.message };
    throw error;
  } finally {
    await program.stop();
  }
});
