import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { linesOf } from '../mark/marked-rows.ts';
import { parseMarks } from '../trust/parse-marks.ts';
import { publishLedger } from '../trust/publish.ts';
import { LEDGER_ROWS, writeLedger } from './ledger-content.ts';
import { runCommand } from './run-measured.ts';

/** Times checking, marking and proving of a made-up ledger in a fresh temporary folder; the targets are for two cores. */
export async function benchLedger(): Promise<number> {
  const folder = await mkdtemp(join(tmpdir(), 'witnessmark-bench-ledger-'));
  try {
    console.log(`Node ${process.versions.node}, ${availableParallelism()} cores`);
    console.log(`${LEDGER_ROWS} made-up rows\n`);
    await writeLedger(folder);
    const env = { WITNESSMARK_CONTENT: folder };
    tell('check, before any mark', await runCommand(['check'], env), 6);
    tell('mark, the check before it included', await runCommand(['mark'], env), 9);
    tell('check, all rows marked', await runCommand(['check'], env), 6);
    tell('proofs', { seconds: await timeProofs(folder) });
    return 0;
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** Works out every file that is published for a marked ledger. */
async function timeProofs(content: string): Promise<number> {
  const folder = join(content, 'engine');
  const { marks } = parseMarks(await readFile(join(folder, 'marks.txt'), 'utf8'));
  const rows = linesOf(await readFile(join(folder, 'marked-rows.jsonl'), 'utf8'));
  const started = performance.now();
  publishLedger(rows, marks);
  return (performance.now() - started) / 1000;
}

function tell(what: string, took: { seconds: number; peak?: number }, target?: number): void {
  const memory = took.peak === undefined ? '' : `${took.peak.toFixed(0).padStart(7)} MB`;
  const goal = target === undefined ? '' : `   target ${target.toFixed(1)} s`;
  console.log(`${what.padEnd(44)}${took.seconds.toFixed(2).padStart(7)} s${memory}${goal}`);
}
