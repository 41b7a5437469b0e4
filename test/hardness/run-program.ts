import { type ChildProcess, spawn } from 'node:child_process';
import type { Ran } from '../cli/run-command.ts';

/** A program that runs, as the head of a group of its own so that its children can be ended with it. */
export interface Running {
  readonly child: ChildProcess;
  readonly ended: Promise<Ran & { readonly signal: NodeJS.Signals | null }>;
  readonly kill: () => void;
}

/** How a program is started. */
export interface RunOptions {
  /** At which step of writing to disk it ends itself without a warning. */
  readonly killAt?: number | undefined;
  readonly env?: Readonly<Record<string, string>>;
  readonly uid?: number;
}

/** Starts a program on the folders of a home; "HOME" in its arguments stands for that. */
export function runProgram(
  program: readonly string[],
  home: string,
  { killAt, env = {}, uid }: RunOptions = {},
): Running {
  const preload = killAt === undefined ? [] : ['--import', './test/write/kill-switch.ts'];
  const args = program.map((part) => part.replace('HOME', home));
  const { FORCE_COLOR: _, VITEST: __, NODE_OPTIONS: ___, ...around } = process.env;
  const child = spawn(process.execPath, [...preload, ...args], {
    detached: true,
    ...(uid === undefined ? {} : { uid, gid: uid }),
    env: {
      ...around,
      NO_COLOR: '1',
      NODE_ENV: 'production',
      // Else the command would start itself anew, without what was loaded before it.
      MALLOC_ARENA_MAX: '2',
      KILL_AT: String(killAt ?? 0),
      WITNESSMARK_CONTENT: `${home}/content`,
      WITNESSMARK_DIST: `${home}/dist`,
      WITNESSMARK_WORK: `${home}/work`,
      ...env,
    },
  });
  const said = { out: '', err: '' };
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    said.out += text;
  });
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    said.err += text;
  });
  const ended = new Promise<Ran & { signal: NodeJS.Signals | null }>((resolve, reject) => {
    child.on('error', reject);
    child.on('close', (status, signal) => resolve({ status, signal, ...said }));
  });
  const kill = () => {
    try {
      if (child.pid !== undefined) process.kill(-child.pid, 'SIGKILL');
    } catch {
      // It has ended by itself.
    }
  };
  return { child, ended, kill };
}
