import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    globalSetup: ['test/outside/missing.ts', 'test/site/build-once.ts'],
    // A browser and a JVM are slow to start on two cores; nothing here measures speed.
    testTimeout: 120_000,
    hookTimeout: 180_000,
    onConsoleLog: (log) => {
      throw new Error(`a test printed to the console: ${log}`);
    },
  },
});
