import { finish } from '../write/journal.ts';
import { withLock } from '../write/lock.ts';

/** Brings to its end an addition that another process broke off, so that the ledger says which lines became rows; or says who is writing. */
export async function finishWriting(contentDir: string): Promise<string | undefined> {
  const result = await withLock(contentDir, 'import', () => finish(contentDir));
  return result && 'busy' in result ? result.busy : undefined;
}
