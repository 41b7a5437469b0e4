import { createHmac, createSecretKey, type KeyObject } from 'node:crypto';

/** A secret that salts are made from, and the first row it serves, from 1. */
export interface Secret {
  readonly from: number;
  /** Held as a key, not as bytes: making one anew for each of many rows takes most of the time of a mark. */
  readonly key: KeyObject;
}

const SECRET_BYTES = 32;
const SALT_BYTES = 16;

const ABOUT = `# From this secret come the salts of private fields. Keep it, keep a copy elsewhere, and never publish it:
# with it you can show later what a private field said; without it nobody can, and whoever has it can try out guesses.
`;

/** Reads `marks-secret.txt`: after its comment, lines of `first row, space, 32 bytes in hex`. Undefined when a line is anything else. */
export function parseSecrets(text: string): readonly Secret[] | undefined {
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== '' && !line.startsWith('#'));
  const secrets = lines.flatMap((line) => {
    const [, from, hex] = /^([1-9]\d{0,8}) ([0-9a-f]{64})$/.exec(line.trim()) ?? [];
    return hex === undefined ? [] : [secretAt(Number(from), Buffer.from(hex, 'hex'))];
  });
  const rising = secrets.every(({ from }, index) => from > (secrets[index - 1]?.from ?? 0));
  return secrets.length > 0 && secrets.length === lines.length && rising ? secrets : undefined;
}

function secretAt(from: number, bytes: Uint8Array): Secret {
  return { from, key: createSecretKey(bytes) };
}

/** The text of `marks-secret.txt`. */
export function printSecrets(secrets: readonly Secret[]): string {
  return (
    ABOUT + secrets.map(({ from, key }) => `${from} ${key.export().toString('hex')}\n`).join('')
  );
}

/** A new secret, from a source of random bytes, for the rows from one on. */
export function makeSecret(from: number, randomBytes: (count: number) => Uint8Array): Secret {
  return secretAt(from, randomBytes(SECRET_BYTES));
}

/** The secret that serves a row; undefined when it is lost. */
export function secretOf(serial: number, secrets: readonly Secret[]): Secret | undefined {
  return secrets.findLast(({ from }) => from <= serial);
}

/** The salt of a row, in hex: the first 16 bytes of HMAC-SHA256 of its kind and id. Shown alone it tells nothing of any other row's. */
export function saltOf({ key }: Secret, kind: string, id: string): string {
  const mac = createHmac('sha256', key).update(`${kind}\n${id}`);
  return mac.digest('hex').slice(0, 2 * SALT_BYTES);
}
