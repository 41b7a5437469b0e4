// Starts a command of src/cli on the Node that the project brings along. Plain JavaScript, so that any Node can read it.
import { existsSync } from 'node:fs';
import module from 'node:module';
import os from 'node:os';

const [major = 0] = process.versions.node.split('.').map(Number);
if (major < 24) {
  console.error(
    `Witnessmark runs on Node 24, and this is Node ${process.versions.node} (${process.execPath}).`,
  );
  console.error(
    'Run "npm ci" in the project folder, with install scripts allowed, and start commands through "npm run".',
  );
  process.exit(1);
}

const [command, ...args] = process.argv.slice(2);
// Without a command the version was all that was asked about: "npm test" starts like that.
if (command === undefined) process.exit(0);

// The pool that pictures are made in has four threads by itself, and reads how many it may have when it is first used.
if (process.env.UV_THREADPOOL_SIZE === undefined)
  process.env.UV_THREADPOOL_SIZE = String(Math.max(4, os.availableParallelism()));

// glibc gives each thread a heap of its own and returns little of it, so hundreds of photos would hold twice the memory they need.
// It reads how many heaps it may have when a process starts, so this process starts itself once more, in its own place.
if (process.platform === 'linux' && process.env.MALLOC_ARENA_MAX === undefined) {
  process.removeAllListeners('warning'); // execve is experimental, which is nothing to a builder
  process.execve(
    process.execPath,
    [process.execPath, ...process.execArgv, ...process.argv.slice(1)],
    {
      ...process.env,
      MALLOC_ARENA_MAX: '2',
    },
  );
}
process.env.ASTRO_TELEMETRY_DISABLED = '1';
// What is loaded at every start is compiled once.
module.enableCompileCache?.();
const known = /^[a-z-]+$/.test(command) && existsSync(new URL(`./${command}.ts`, import.meta.url));
const { main } = known ? await import(`./${command}.ts`) : {};
if (main === undefined) {
  console.error(`There is no command "${command}". "npm run" lists those there are.`);
  process.exit(2);
}
const { tellFailure } = await import('./tell-failure.ts');
// Whoever reads what is printed may stop reading, as "head" does.
process.stdout.on('error', (error) => (error.code === 'EPIPE' ? process.exit() : end(error)));
process.on('uncaughtException', end);
try {
  process.exitCode = (await main(args)) ?? 0;
} catch (error) {
  end(error);
}

/** Tells what the machine refused in a line or two; anything else is our bug, and is shown with its place. */
function end(error) {
  console.error(tellFailure(error) ?? error);
  process.exit(1);
}
