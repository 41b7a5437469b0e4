import { createHash } from 'node:crypto';

/**
 * The name by which a line is recognised at the next import, whatever becomes of its row: the account, and a hash of what identifies it.
 * Equal lines are counted, so that two equal purchases on a day are two.
 */
export function keyMaker(account: string): (parts: readonly string[]) => string {
  const seen = new Map<string, number>();
  return (parts) => {
    const text = JSON.stringify(parts.map(plain));
    const hash = createHash('sha256').update(text).digest('hex').slice(0, 24);
    const count = (seen.get(hash) ?? 0) + 1;
    seen.set(hash, count);
    return `${account}/${hash}/${count}`;
  };
}

/** Programs pad and break texts differently from one export to the next. */
function plain(text: string): string {
  return text.normalize('NFC').replace(/\s+/g, ' ').trim();
}
