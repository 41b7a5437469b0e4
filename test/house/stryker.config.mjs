const folder = process.env.WITNESSMARK_MUTATE;
// Files of the folder, or places in them.
const files = process.env.WITNESSMARK_MUTATE_FILES.split(',');
const kept = `.witnessmark/mutation/${folder}`;

/** @type {import('@stryker-mutator/api/core').PartialStrykerOptions} */
export default {
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  vitest: { configFile: 'test/house/vitest.judges.ts', related: false },
  coverageAnalysis: 'perTest',
  // Tables that are only read while a file is loaded would need all tests for each cell; they are held to published values one by one.
  ignoreStatic: true,
  concurrency: 1,
  mutate: files.map((file) => `src/${folder}/${file}`),
  ignorePatterns: ['dist', '.witnessmark', '.astro', 'docs'],
  tempDirName: `${kept}/copy`,
  reporters: ['json', 'dots'],
  jsonReporter: { fileName: `${kept}/report.json` },
};
