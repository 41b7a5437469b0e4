import { type ChildProcess, spawn } from 'node:child_process';

/** How a process that added rows ended, and the rows that it said are written. */
export interface Added {
  readonly signal: NodeJS.Signals | null;
  readonly status: number | null;
  readonly confirmed: readonly string[];
  readonly err: string;
}

/** Starts a process that adds so many rows; with a number it dies at that step of writing to disk. */
export function startAdder(
  content: string,
  name: string,
  count: number,
  { killAt, compiled }: { readonly killAt?: number; readonly compiled?: string } = {},
): { readonly child: ChildProcess; readonly ended: Promise<Added> } {
  const preload = killAt === undefined ? [] : ['--import', './test/write/kill-switch.ts'];
  const child = spawn(
    process.execPath,
    [...preload, 'test/write/adder.ts', content, name, String(count)],
    {
      env: {
        ...process.env,
        NODE_OPTIONS: '',
        KILL_AT: String(killAt ?? 0),
        // Where many start in a row, all but the first are spared most of the loading.
        ...(compiled === undefined ? {} : { NODE_COMPILE_CACHE: compiled }),
      },
    },
  );
  let out = '';
  let err = '';
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    out += text;
  });
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    err += text;
  });
  const ended = new Promise<Added>((resolve, reject) => {
    child.on('error', reject);
    child.on('close', (status, signal) =>
      resolve({ status, signal, confirmed: out.split('\n').filter(Boolean), err }),
    );
  });
  return { child, ended };
}
