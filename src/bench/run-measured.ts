import { spawn } from 'node:child_process';
import { watchMemory } from './tree-memory.ts';

/** What a process took, with all that it started. */
export interface Took {
  /** From start to end, start-up included. */
  readonly seconds: number;
  /** Seconds of all cores together: on a machine that others use too it tells more than the clock. */
  readonly cpu: number;
  /** The most memory that it held, in MB. */
  readonly peak: number;
}

/** Prints the fields of /proc/self/stat, the time of ended children among them, as the last line of errors. */
const TELL = `data:text/javascript,import{readFileSync as r}from'node:fs';process.on('exit',()=>console.error(r('/proc/self/stat','latin1')))`;

type Environment = Readonly<Record<string, string>>;

/** Runs a script in a process of its own, which has to end well. Linux only. */
export async function runMeasured(
  args: readonly string[],
  env: Environment = {},
): Promise<Took & { output: string }> {
  const started = performance.now();
  const child = spawn(process.execPath, ['--import', TELL, ...args], {
    env: { ...process.env, ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const mostMemory = watchMemory(child.pid ?? 0);
  let [output, errors] = ['', ''];
  child.stdout.on('data', (text: Buffer) => {
    output += text;
  });
  child.stderr.on('data', (text: Buffer) => {
    errors += text;
  });
  const status = await new Promise<number | null>((resolve) => child.on('close', resolve));
  const [seconds, peak] = [(performance.now() - started) / 1000, mostMemory()];
  if (status !== 0)
    throw new Error(
      `${args.join(' ')} ended with ${status}: ${(output + errors).trim().slice(-2000)}`,
    );
  return { seconds, cpu: cpuIn(errors.trim().split('\n').at(-1) ?? ''), peak, output };
}

/** Ticks of a process and of its ended children, in user and system, a hundredth of a second each. */
function cpuIn(stat: string): number {
  const fields = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
  return fields.slice(11, 15).reduce((sum, ticks) => sum + Number(ticks), 0) / 100;
}

/** The same for a command of the project. */
export const runCommand = (args: readonly string[], env: Environment = {}) =>
  runMeasured(['src/cli/run.mjs', ...args], env);
