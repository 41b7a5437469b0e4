import { dirname } from 'node:path';
import { defineConfig } from 'vitest/config';
import { judges } from './mutated-folder.ts';

/** Only the tests that judge the folder that is mutated, without the set-up of the whole suite. */
export default defineConfig({
  test: {
    include: judges(process.env.WITNESSMARK_MUTATE ?? ''),
    testTimeout: 60_000,
    // One worker for all: none of these tests leaves anything behind, and a worker for each file takes longer than its tests.
    isolate: false,
    fileParallelism: false,
    // Other programs are out of reach, so that checks that would start one a thousand times leave themselves out.
    env: { PATH: dirname(process.execPath) },
  },
});
