import { writeFileSync } from 'node:fs';

const file = process.env.WITNESSMARK_TIMES;
const seconds: Record<string, number> = {};
let since = performance.now();

/** Ends a stage that began at the end of the one before; with `WITNESSMARK_TIMES=file` the seconds of all are written there when the process ends. */
export function lap(stage: string): void {
  const now = performance.now();
  seconds[stage] = (seconds[stage] ?? 0) + (now - since) / 1000;
  since = now;
}

/** Seconds of the stages that have ended. */
export function lapsSoFar(): Readonly<Record<string, number>> {
  return { ...seconds };
}

/** Takes over the stages that another process has gone through up to now. */
export function takeLaps(laps: Readonly<Record<string, number>>): void {
  Object.assign(seconds, laps);
  since = performance.now();
}

if (file !== undefined)
  process.once('exit', () => writeFileSync(file, `${JSON.stringify(seconds)}\n`));
