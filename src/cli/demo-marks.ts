import { spawnSync } from 'node:child_process';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { contentDir, contentDirProblem } from '../site/folders.ts';
import { writeWhole } from '../write/swap-in.ts';

/** Days on which the demo's ledgers are marked. */
const DAYS: Readonly<Record<string, readonly string[]>> = {
  lapwing: ['2025-10-31', '2026-03-31', '2026-09-30'],
  ostermoor: ['2026-06-30'],
};

/** The project whose marks are signed, to show it; its key is thrown away, so marks to come would be by another. */
const SIGNED = 'lapwing';

/** Marks the demo's two projects anew, by the command that a builder uses. For the demo only: it throws away the marks there were. */
export async function main(): Promise<number> {
  const noDir = contentDirProblem();
  if (noDir) {
    console.error(noDir);
    return 2;
  }
  const home = await mkdtemp(join(tmpdir(), 'witnessmark-key-'));
  try {
    const key = join(home, 'demo.pem');
    for (const project of Object.keys(DAYS))
      for (const name of ['marks.txt', 'marked-rows.jsonl', 'marks-secret.txt'])
        await rm(join(contentDir, project, name), { force: true });
    await nameKey(undefined);
    const made = mark([SIGNED, '--new-key', key]);
    await nameKey(/^markKey: (.+)$/m.exec(made)?.[1]);
    for (const [project, days] of Object.entries(DAYS))
      for (const day of days)
        mark([project, '--date', day, ...(project === SIGNED ? ['--key', key] : [])]);
    return 0;
  } catch (error) {
    console.error((error as Error).message);
    return 1;
  } finally {
    await rm(home, { recursive: true });
  }
}

/** Writes the public key into project.yaml in place of the one there was. */
async function nameKey(line: string | undefined): Promise<void> {
  const file = join(contentDir, SIGNED, 'project.yaml');
  const text = (await readFile(file, 'utf8')).replace(/^markKey: .*\n/m, '');
  const added = line === undefined ? '' : `markKey: ${line}\n`;
  await writeWhole(
    file,
    text.replace(/^timeZone: .*\n/m, (zone) => zone + added),
  );
}

function mark(args: readonly string[]): string {
  const run = spawnSync(process.execPath, ['src/cli/run.mjs', 'mark', ...args], {
    encoding: 'utf8',
  });
  if (run.status !== 0) throw new Error(run.stdout + run.stderr);
  console.log(run.stdout);
  return run.stdout;
}
