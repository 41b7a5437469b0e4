import { spawnSync } from 'node:child_process';
import { webcrypto } from 'node:crypto';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { PublishedLedger } from '../../src/trust/publish.ts';
import { verify } from '../../src/trust/verify/verify-browser.js';

// The two verifiers share no code with the library or with each other: one is Python, the other plain JavaScript on WebCrypto.
const verifyPy = fileURLToPath(new URL('../../src/trust/verify/verify.py', import.meta.url));

/** Whether this machine lacks Python 3. */
export const noPython = spawnSync('python3', ['--version']).status !== 0;

/** What a verifier printed, and whether it was content. */
export interface Answer {
  readonly ok: boolean;
  readonly lines: readonly string[];
}

type Files = Readonly<Record<keyof PublishedLedger, string | Uint8Array>>;

/** Lets verify.py look at a folder with these files, and at an older marks.txt if one was kept. */
export async function askPython(files: Files, kept?: string): Promise<Answer> {
  const folder = mkdtempSync(join(tmpdir(), 'witnessmark-trust-'));
  try {
    for (const [name, content] of Object.entries(files)) writeFileSync(join(folder, name), content);
    const older = kept === undefined ? [] : [join(folder, 'kept.txt')];
    for (const file of older) writeFileSync(file, kept ?? '');
    const run = spawnSync('python3', [verifyPy, folder, ...older], { encoding: 'utf8' });
    if (run.stderr !== '') throw new Error(run.stderr);
    return { ok: run.status === 0, lines: run.stdout.trimEnd().split('\n') };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Lets the browser's verifier look at the same, on Node's WebCrypto. */
export function askBrowser(files: Files, kept?: string): Promise<Answer> {
  const bytes = {
    rows: Buffer.from(files['rows.jsonl']),
    marks: Buffer.from(files['marks.txt']),
    proofs: Buffer.from(files['proofs.json']),
  };
  return verify(
    kept === undefined ? bytes : { ...bytes, kept: Buffer.from(kept) },
    webcrypto.subtle,
  );
}
