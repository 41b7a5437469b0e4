import { spawnSync } from 'node:child_process';
import { chmod, chown, mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { soundFiles } from '../check/sound-files.ts';
import { type Dirs, filesOf, inWorkshop, type Ran, runCommand } from '../cli/run-command.ts';
import { runProgram } from './run-program.ts';

const HOURS = 'press/ledger/hours.csv';
const isRoot = process.getuid?.() === 0;
/** Permissions do not bind the superuser, so that the command is run by nobody then. */
const UID = isRoot ? 65_534 : undefined;

let compiled = '';
beforeAll(async () => {
  compiled = await mkdtemp(join(tmpdir(), 'witnessmark-compiled-'));
  vi.stubEnv('NODE_COMPILE_CACHE', compiled);
});
afterAll(async () => {
  vi.unstubAllEnvs();
  await rm(compiled, { recursive: true, force: true });
});

const contentOf = async ({ content }: Dirs) =>
  Object.fromEntries(
    Object.entries(await filesOf(content)).filter(([path]) => !path.startsWith('.witnessmark/')),
  );

/** Told in a line or two, without a stack. */
function isPlain({ status, err }: Ran, said: RegExp): void {
  expect(status, err).toBe(1);
  expect(err).toMatch(said);
  expect(err.trim().split('\n').length, err).toBeLessThanOrEqual(2);
  expect(err).not.toMatch(/^\s+at /m);
}

describe('a disk that takes no more', () => {
  /** Runs a command that may write files of so many blocks of 512 bytes: what is longer is refused, as on a full disk. */
  const within = (blocks: number, args: readonly string[], dirs: Dirs): Ran => {
    const env = {
      ...process.env,
      NODE_OPTIONS: '',
      NODE_COMPILE_CACHE: '',
      WITNESSMARK_CONTENT: dirs.content,
      WITNESSMARK_DIST: dirs.dist,
      WITNESSMARK_WORK: dirs.work,
    };
    const limited = ['-c', `ulimit -f ${blocks}; exec "$@"`, 'sh', process.execPath];
    const ran = spawnSync('sh', [...limited, 'src/cli/run.mjs', ...args], {
      env,
      encoding: 'utf8',
    });
    return { status: ran.status, out: ran.stdout, err: ran.stderr };
  };
  const LONG = 'Cleaned the frame and all that hangs on it for a very long time. '.repeat(20);
  const changes = {
    [HOURS]: String(soundFiles[HOURS]).replace('Cleaned the frame', LONG),
    'press/ledger/costs.csv': ['180,vehicle', '180,Vehicle'] as const,
  };

  it.each([
    [0, ['add', 'hours', '1:30', 'More'], /witnessmark\/\S+ can't be written: it is larger/],
    [1, ['add', 'hours', '1:30', 'More'], /hours\.csv can't be written: it is larger/],
    [0, ['check', '--fix'], /can't be written: it is larger/],
    [1, ['schema'], /\.json can't be written: it is larger/],
    [0, ['build'], /build\.lock can't be written: it is larger/],
  ])('with room for %d blocks: %j leaves all as it was', (blocks, args, said) =>
    inWorkshop(changes, async (dirs) => {
      const before = await contentOf(dirs);
      isPlain(within(blocks, args, dirs), said);
      expect(await contentOf(dirs)).toEqual(before);
      const left = await readdir(join(dirs.content, '.witnessmark')).catch(() => []);
      expect(left.filter((name) => name !== '.gitignore')).toEqual([]);
    }),
  );

  it('leaves no secret without its mark', () =>
    inWorkshop({}, async (dirs) => {
      const before = await contentOf(dirs);
      isPlain(within(1, ['mark'], dirs), /marked-rows\.jsonl can't be written/);
      expect(await contentOf(dirs)).toEqual(before);
    }));
});

describe('what this user may not', () => {
  const as = (dirs: Dirs, ...args: string[]): Promise<Ran> => {
    const home = join(dirs.dist, '..');
    const env = {
      WITNESSMARK_CONTENT: dirs.content,
      HOME: home,
      NODE_COMPILE_CACHE: '',
      NODE_DISABLE_COMPILE_CACHE: '1',
    };
    const options = UID === undefined ? { env } : { env, uid: UID };
    return runProgram(['src/cli/run.mjs', ...args], home, options).ended;
  };
  /** A checkout may lie where nobody else may look. */
  const canRun = () => {
    const probe = spawnSync(process.execPath, ['src/cli/run.mjs'], {
      ...(UID === undefined ? {} : { uid: UID, gid: UID }),
    });
    if (probe.status === 0) return true;
    process.stderr.write('skipped: another user may not read this checkout\n');
    return false;
  };

  it.runIf(canRun())('read is told with all else; a folder that is only read can be checked', () =>
    inWorkshop({ 'press/ledger/costs.csv': ['12.50', 'twelve'] }, async (dirs) => {
      if (isRoot) await chown(join(dirs.content, HOURS), 0, 0);
      await chmod(dirs.content, 0o555);
      await chmod(join(dirs.content, HOURS), 0o000);
      const { status, out } = await as(dirs, 'check');
      expect([status, out]).toEqual([
        1,
        expect.stringMatching(
          /costs\.csv:3:18\n[\s\S]*hours\.csv:1:1\n {2}the file can't be read: this user may not\n {2}→ see to its permissions/,
        ),
      ]);
      await chmod(join(dirs.content, HOURS), 0o644);
      await chmod(dirs.content, 0o755);
    }),
  );

  it.runIf(canRun())('write stays as it is', () =>
    inWorkshop({}, async (dirs) => {
      const before = await contentOf(dirs);
      await chmod(dirs.content, 0o555);
      isPlain(await as(dirs, 'add', 'hours', '1:00', 'x'), /\.witnessmark may not be opened or ch/);
      isPlain(await as(dirs, 'mark'), /\.witnessmark may not be opened or changed by this user/);
      await chmod(dirs.content, 0o755);
      if (UID !== undefined)
        for (const name of ['.', 'press', 'press/ledger'])
          await chown(join(dirs.content, name), UID, UID);
      await chmod(join(dirs.content, HOURS), 0o444);
      isPlain(
        await as(dirs, 'add', 'hours', '1:00', 'x'),
        /hours\.csv may not be opened or changed/,
      );
      expect(await contentOf(dirs)).toEqual(before);
    }),
  );
});

it('two that write at once both write', () =>
  inWorkshop({}, async (dirs) => {
    const mark = runCommand(['mark', '--date', '2025-06-01'], dirs);
    const rows = ['One', 'Two'].map((what) =>
      runCommand(['add', 'hours', '1:00', what, '--date', '2025-05-02'], dirs),
    );
    const fix = runCommand(['check', '--fix'], dirs);
    const ran = await Promise.all([mark, ...rows, fix]);
    expect(ran.map(({ status, err }) => [status, err])).toEqual(ran.map(() => [0, '']));
    const { status, out } = await runCommand(['check'], dirs);
    expect([status, out]).toEqual([0, expect.stringContaining('0 problems')]);
  }));
