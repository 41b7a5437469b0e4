import { createPublicKey, type KeyObject } from 'node:crypto';
import { fromBase64, sha256, toBase64, utf8 } from './hash.ts';

/** The public half of a signing key, and the name it signs under. */
export interface NoteKey {
  readonly name: string;
  readonly publicKey: KeyObject;
}

const ED25519 = 0x01;
const KEY_BYTES = 32;

/** The key id, C2SP signed-note: the first four bytes of `SHA-256(name || 0x0A || 0x01 || public key)`, in hex. */
export function keyId(name: string, key: KeyObject): string {
  return idOf(name, rawPublicKey(key));
}

/**
 * A public key as one line to show and to copy: `name+id+base64(0x01 || public key)`, which other readers of signed notes
 * understand.
 *
 * @example printKey({ name: 'example.org/lapwing', publicKey }) // 'example.org/lapwing+1f3a…+AQ…'
 */
export function printKey({ name, publicKey }: NoteKey): string {
  const raw = rawPublicKey(publicKey);
  return `${name}+${idOf(name, raw)}+${toBase64(Buffer.from([ED25519, ...raw]))}`;
}

/** Reads the line of a public key; undefined when it is none, is not Ed25519, or its id does not belong to it. */
export function parseKey(text: string): NoteKey | undefined {
  const [, name = '', id, base64 = ''] = /^([!-*,-~]+)\+([0-9a-f]{8})\+(.+)$/.exec(text) ?? [];
  const bytes = fromBase64(base64);
  if (bytes?.length !== 1 + KEY_BYTES || bytes[0] !== ED25519) return undefined;
  const raw = bytes.subarray(1);
  return idOf(name, raw) === id ? { name, publicKey: publicKeyOf(raw) } : undefined;
}

function idOf(name: string, raw: Uint8Array): string {
  const id = sha256(utf8(`${name}\n`), Uint8Array.of(ED25519), raw);
  return Buffer.from(id.subarray(0, 4)).toString('hex');
}

/** The 32 bytes of RFC 8032 §5.1.5, by way of the JSON form of a key (RFC 8037 §2). */
function rawPublicKey(key: KeyObject): Uint8Array {
  const publicKey = key.type === 'private' ? createPublicKey(key) : key;
  const { crv, x } = publicKey.export({ format: 'jwk' });
  if (crv !== 'Ed25519' || x === undefined) throw new TypeError('the key is not Ed25519');
  return Buffer.from(x, 'base64url');
}

function publicKeyOf(raw: Uint8Array): KeyObject {
  const x = Buffer.from(raw).toString('base64url');
  return createPublicKey({ key: { kty: 'OKP', crv: 'Ed25519', x }, format: 'jwk' });
}
