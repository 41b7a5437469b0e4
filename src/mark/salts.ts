import { createHmac } from 'node:crypto';

/** A secret that salts are made from, and the first row it serves, from 1. */
export interface Secret {
  readonly from: number;
  readonly hex: string;
}

const SECRET_BYTES = 32;
const SALT_BYTES = 16;

const ABOUT = `# From this secret come the salts of private fields. Keep it, keep a copy elsewhere, and never publish it:
# with it you can show later what a private field said; without it nobody can, and whoever has it can try out guesses.
`;

/** Reads `marks-secret.txt`: after its comment, lines of `first row, space, 32 bytes in hex`. Undefined when a line is anything else. */
export function parseSecrets(text: string): readonly Secret[] | undefined {
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== '' && !line.startsWith('#'));
  const secrets = lines.map((line) => {
    const [, from, hex = ''] = /^([1-9]\d{0,8}) ([0-9a-f]{64})$/.exec(line.trim()) ?? [];
    return { from: Number(from), hex };
  });
  const rising = secrets.every(
    ({ from }, index) => index === 0 || from > (secrets[index - 1]?.from ?? 0),
  );
  return secrets.length > 0 && rising && secrets.every(({ hex }) => hex !== '')
    ? secrets
    : undefined;
}

/** The text of `marks-secret.txt`. */
export function printSecrets(secrets: readonly Secret[]): string {
  return ABOUT + secrets.map(({ from, hex }) => `${from} ${hex}\n`).join('');
}

/** A new secret, from a source of random bytes, for the rows from one on. */
export function makeSecret(from: number, randomBytes: (count: number) => Uint8Array): Secret {
  return { from, hex: Buffer.from(randomBytes(SECRET_BYTES)).toString('hex') };
}

/** The secret that serves a row; undefined when it is lost. */
export function secretOf(serial: number, secrets: readonly Secret[]): Secret | undefined {
  return secrets.findLast(({ from }) => from <= serial);
}

/** The salt of a row, in hex: the first 16 bytes of HMAC-SHA256 of its kind and id. Shown alone it tells nothing of any other row's. */
export function saltOf({ hex }: Secret, kind: string, id: string): string {
  const mac = createHmac('sha256', Buffer.from(hex, 'hex')).update(`${kind}\n${id}`);
  return mac.digest('hex').slice(0, 2 * SALT_BYTES);
}
