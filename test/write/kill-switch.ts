// Loaded before a program, ends it without a warning just before the step of writing to disk that KILL_AT counts to; where that step
// writes bytes, half of them are written first.
import { writeFileSync, writeSync } from 'node:fs';
import fs, { type FileHandle } from 'node:fs/promises';
import { registerHooks, syncBuiltinESMExports } from 'node:module';

// No row here has a formula, and loading what reads them would be half of every start.
const NO_FORMULAS =
  'data:text/javascript,export const create = () => ({}); export const parseDependencies = {}, derivativeDependencies = {};';
registerHooks({
  resolve: (name, context, next) =>
    name === 'mathjs/number' ? { url: NO_FORMULAS, shortCircuit: true } : next(name, context),
});

type Step = (...args: unknown[]) => Promise<unknown>;

const killAt = Number(process.env.KILL_AT);
let left = killAt;

// How many steps there are can be asked, by a number that is never come to.
const { STEPS_TO } = process.env;
if (STEPS_TO) process.on('exit', () => writeFileSync(STEPS_TO, String(killAt - left)));

function killed(): boolean {
  return --left === 0;
}

const handle = await fs.open(process.execPath, 'r');
const ofHandle: Record<string, Step> = Object.getPrototypeOf(handle);
await handle.close();
for (const name of ['sync', 'chmod']) counted(ofHandle, name);
for (const name of ['open', 'mkdir', 'link', 'rename', 'rm', 'appendFile', 'writeFile'])
  counted(fs as unknown as Record<string, Step>, name);
const { writeFile } = ofHandle;
ofHandle.writeFile = async function (this: FileHandle, ...args) {
  if (killed()) {
    const bytes = Buffer.from(args[0] as string | Uint8Array);
    writeSync(this.fd, bytes.subarray(0, Math.floor(bytes.length / 2)));
    die();
  }
  return writeFile?.apply(this, args);
};
syncBuiltinESMExports();

function counted(owner: Record<string, Step>, name: string): void {
  const step = owner[name];
  owner[name] = async function (this: unknown, ...args) {
    if (killed()) die();
    return step?.apply(this, args);
  };
}

function die(): never {
  process.kill(process.pid, 'SIGKILL');
  // A signal comes when the kernel likes; nothing more is done until then.
  for (;;);
}
