import { dirname } from 'node:path';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';
import { judges } from './mutated-folder.ts';

/** Milliseconds of each test file; the longest seen, as a run that ends early says little of the files after. */
const longest = new Map<string, number>();

/** The quickest file first, since the first test that fails ends the run: a mistake that many notice should not wait for the slow ones. */
class QuickestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const took = (file: TestSpecification) => longest.get(file.moduleId) ?? 0;
    for (const file of files) {
      const last = this.ctx.cache.getTestSpecificationResult(file)?.duration ?? 0;
      longest.set(file.moduleId, Math.max(took(file), last));
    }
    return files.toSorted((a, b) => took(a) - took(b));
  }
}

/** Only the tests that judge the folder that is mutated, without the set-up of the whole suite. */
export default defineConfig({
  test: {
    include: judges(
      process.env.WITNESSMARK_MUTATE ?? '',
      process.env.WITNESSMARK_MUTATE_SLOW !== undefined,
    ),
    // The first run is slowed by the counting of what each test comes by; what hangs later is ended by its own measure.
    testTimeout: 600_000,
    sequence: { sequencer: QuickestFirst },
    // One worker for all: none of these tests leaves anything behind, and a worker for each file takes longer than its tests.
    isolate: false,
    fileParallelism: false,
    // Other programs are out of reach, so that checks that would start one a thousand times leave themselves out.
    env: { PATH: dirname(process.execPath) },
  },
});
