const folder = process.env.WITNESSMARK_MUTATE;
// Some files of the folder, or all.
const asked = process.env.WITNESSMARK_MUTATE_FILES;
const files = asked ? asked.split(',') : ['**/*.{ts,js}'];
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
  // The page's own script runs in a browser, where no mutant can be switched on.
  mutate: [...files.map((file) => `src/${folder}/${file}`), '!src/trust/verify/marks-page.js'],
  ignorePatterns: ['dist', '.witnessmark', '.astro', 'docs'],
  tempDirName: `${kept}/copy`,
  reporters: ['json', 'dots'],
  jsonReporter: { fileName: `${kept}/report.json` },
};
