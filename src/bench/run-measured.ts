import { spawn } from 'node:child_process';

/** What a process took. */
export interface Took {
  /** From start to end, start-up included. */
  readonly seconds: number;
  /** Seconds of all cores together: on a machine that others use too it tells more than the clock. */
  readonly cpu: number;
  /** The most memory that it held, in MB. */
  readonly peak: number;
}

/** Prints what a process took, as its last line of errors. */
const TELL = `data:text/javascript,process.on('exit',()=>console.error(JSON.stringify(process.resourceUsage())))`;

type Environment = Readonly<Record<string, string>>;

/** Runs a script in a process of its own, which has to end well. */
export async function runMeasured(
  args: readonly string[],
  env: Environment = {},
): Promise<Took & { output: string }> {
  const started = performance.now();
  const child = spawn(process.execPath, ['--import', TELL, ...args], {
    env: { ...process.env, ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let [output, errors] = ['', ''];
  child.stdout.on('data', (text: Buffer) => {
    output += text;
  });
  child.stderr.on('data', (text: Buffer) => {
    errors += text;
  });
  const status = await new Promise<number | null>((resolve) => child.on('close', resolve));
  if (status !== 0)
    throw new Error(
      `${args.join(' ')} ended with ${status}: ${(output + errors).trim().slice(-2000)}`,
    );
  const seconds = (performance.now() - started) / 1000;
  const { maxRSS, userCPUTime, systemCPUTime } = JSON.parse(
    errors.trim().split('\n').at(-1) ?? '',
  ) as NodeJS.ResourceUsage;
  return { seconds, cpu: (userCPUTime + systemCPUTime) / 1e6, peak: maxRSS / 1024, output };
}

/** The same for a command of the project. */
export const runCommand = (args: readonly string[], env: Environment = {}) =>
  runMeasured(['src/cli/run.mjs', ...args], env);
