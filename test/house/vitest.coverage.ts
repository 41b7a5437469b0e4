import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { defineConfig } from 'vitest/config';

/** Tests that need neither the built site nor a command in a process of its own, which would not be seen. */
const include = readdirSync('test', { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.test.ts') && !/^(site|cli|house)\b/.test(name))
  .map((name) => join('test', name))
  .filter((file) => !readFileSync(file, 'utf8').includes("inject('"));

export default defineConfig({
  test: {
    include,
    testTimeout: 300_000,
    hookTimeout: 300_000,
    reporters: ['dot'],
    coverage: {
      provider: 'v8',
      include: ['src/**/*.{ts,js}'],
      reporter: ['json-summary'],
      reportsDirectory: '.witnessmark/coverage',
      reportOnFailure: true,
    },
  },
});
