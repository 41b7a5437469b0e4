import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { expect, it } from 'vitest';
import { inWorkshop, runCommand } from './run-command.ts';

/** A Node older than 24 on this machine, outside of the project. */
function oldNode(): string | undefined {
  const folders = (process.env['PATH'] ?? '').split(delimiter);
  return folders
    .filter((folder) => !folder.includes('node_modules'))
    .map((folder) => join(folder, 'node'))
    .filter((path) => existsSync(path))
    .find(
      (path) =>
        Number(/^v(\d+)/.exec(execFileSync(path, ['--version'], { encoding: 'utf8' }))?.[1]) < 24,
    );
}

it('under a Node that is too old, a command says which one is needed and how to get it', async (context) => {
  const node = oldNode();
  if (node === undefined) return context.skip('no Node older than 24 is installed on this machine');

  await inWorkshop({}, async (dirs) => {
    const ran = await runCommand(['check'], dirs, node);
    expect(ran).toMatchObject({ status: 1, out: '' });
    expect(ran.err).toMatch(
      /^Witnessmark runs on Node 24, and this is Node \d+\.\d+\.\d+ \(.+\)\.\n/,
    );
    expect(ran.err).toContain('Run "npm ci" in the project folder');
    expect(ran.err).not.toContain('    at ');
  });
});
