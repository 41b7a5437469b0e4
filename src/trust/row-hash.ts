import { canonicalJson } from './canonical-json.ts';
import { type Hash, sha256, utf8 } from './hash.ts';
import { leafHash } from './hash-tree.ts';

/** What a row may hold: text and whole numbers, alone or in lists and groups. A decimal is text, so that its printing can't differ. */
export type RowValue = string | number | readonly RowValue[] | RowFields;

/** Named values of a row. */
export interface RowFields {
  readonly [name: string]: RowValue;
}

/** A row of the ledger, as far as its hash goes. Text is in Unicode form C already. */
export interface LedgerRow {
  /** Which table it is a row of, such as `costs`. */
  readonly kind: string;
  readonly id: string;
  /** Its place in the order of recording. */
  readonly serial: number;
  readonly public: RowFields;
  /** What stays at home, if there is anything. */
  readonly private?: RowFields | undefined;
  /** The row's salt, in hex; needed where there are private fields. */
  readonly salt?: string | undefined;
}

const SALT_BYTES = 16;

/**
 * The published text of a row, which is also what is hashed: canonical JSON of its public fields, and a hash in place of the private
 * ones.
 *
 * @throws TypeError for a value that is neither text nor a whole number, and for private fields without a salt.
 * @example rowText({ kind: 'costs', id: 'c-7', serial: 3, public: { what: 'Paint' } })
 * // '{"id":"c-7","kind":"costs","public":{"what":"Paint"},"serial":3}'
 */
export function rowText({ kind, id, serial, salt, ...fields }: LedgerRow): string {
  const hidden = Object.keys(fields.private ?? {}).length > 0 ? fields.private : undefined;
  const row = { id, kind, public: fields.public, serial };
  requireRowValue(row, '$');
  return canonicalJson(hidden ? { ...row, privateHash: privateHash(hidden, salt) } : row);
}

/** The leaf of a row in the hash tree. */
export function rowLeaf(text: string): Hash {
  return leafHash(utf8(text));
}

/**
 * `SHA-256(salt || canonical JSON of the private fields)` in hex. Without the salt a supplier or a price would be guessed in seconds;
 * with it, and the fields, the builder can show later what was recorded.
 */
export function privateHash(fields: RowFields, salt: string | undefined): string {
  if (salt === undefined || !/^[0-9a-f]{32}$/.test(salt))
    throw new TypeError(`private fields need a salt of ${SALT_BYTES} bytes in hex`);
  requireRowValue(fields, '$.private');
  const hash = sha256(Buffer.from(salt, 'hex'), utf8(canonicalJson(fields)));
  return Buffer.from(hash).toString('hex');
}

/** A new salt in hex, from a source of random bytes. The builder keeps it; who lacks it can't check private fields, not even the builder. */
export function makeSalt(randomBytes: (count: number) => Uint8Array): string {
  const salt = randomBytes(SALT_BYTES);
  if (salt.length !== SALT_BYTES) throw new RangeError(`a salt has ${SALT_BYTES} bytes`);
  return Buffer.from(salt).toString('hex');
}

function requireRowValue(value: unknown, path: string): void {
  if (typeof value === 'string' || Number.isSafeInteger(value)) return;
  if (typeof value !== 'object' || value === null)
    throw new TypeError(`${path} is ${String(value)}, neither text nor a whole number`);
  for (const [name, inner] of Object.entries(value))
    requireRowValue(inner, Array.isArray(value) ? `${path}[${name}]` : `${path}.${name}`);
}
