import { hash } from 'node:crypto';

/** The 32 bytes of a SHA-256. */
export type Hash = Uint8Array;

/** Length of a hash in bytes. */
export const HASH_BYTES = 32;

/** SHA-256 (FIPS 180-4) of the parts, one after the other. */
export function sha256(...parts: readonly Uint8Array[]): Hash {
  return hash('sha256', Buffer.concat(parts), 'buffer');
}

/** The bytes of a text in UTF-8, the only encoding that is hashed or signed here. */
export function utf8(text: string): Uint8Array {
  return Buffer.from(text, 'utf8');
}

/** Whether two byte strings are the same. */
export function sameBytes(a: Uint8Array, b: Uint8Array): boolean {
  return Buffer.compare(a, b) === 0;
}

/** Base64 with padding (RFC 4648 §4). */
export function toBase64(bytes: Uint8Array): string {
  return Buffer.from(bytes).toString('base64');
}

/** The bytes of a base64 text; undefined unless it is the one text that these bytes have (RFC 4648 §3.5, pad bits zero). */
export function fromBase64(text: string): Uint8Array | undefined {
  const bytes = Buffer.from(text, 'base64');
  return bytes.toString('base64') === text ? bytes : undefined;
}
