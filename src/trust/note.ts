import { type KeyObject, sign, verify } from 'node:crypto';
import { fromBase64, toBase64, utf8 } from './hash.ts';
import { keyId, type NoteKey } from './note-key.ts';
import { fails, HOLDS, type Verified } from './proof.ts';

/** One signature under a text, by the key with this name and id. Its kind is known only to whoever knows the key. */
export interface NoteSignature {
  readonly name: string;
  /** Four bytes in hex. */
  readonly keyId: string;
  readonly signature: Uint8Array;
}

/** Why a text does not count as signed by a key. */
export type SignatureFailure = 'not-signed-by-this-key' | 'signature-differs';

/** How a signature line starts: an em dash, which no other line may start with. */
export const SIGNATURE_START = '— ';

/** Signs a text with an Ed25519 key (C2SP signed-note, signature type 0x01; RFC 8032). */
export function signNote(text: string, name: string, privateKey: KeyObject): NoteSignature {
  return {
    name,
    keyId: keyId(name, privateKey),
    signature: sign(null, utf8(text), privateKey),
  };
}

/**
 * Whether a text is signed by a key. Signatures by others are passed over, as C2SP signed-note wants; every one that names this
 * key must be right.
 */
export function verifyNote(
  text: string,
  signatures: readonly NoteSignature[],
  { name, publicKey }: NoteKey,
): Verified<SignatureFailure> {
  const id = keyId(name, publicKey);
  const own = signatures.filter((line) => line.name === name && line.keyId === id);
  if (own.length === 0) return fails('not-signed-by-this-key');
  const right = own.every(({ signature }) => verify(null, utf8(text), publicKey, signature));
  return right ? HOLDS : fails('signature-differs');
}

/** The line of a signature: `— name base64(key id || signature)`, with its line feed. */
export function printSignature({ name, keyId, signature }: NoteSignature): string {
  const bytes = Buffer.concat([Buffer.from(keyId, 'hex'), signature]);
  return `${SIGNATURE_START}${name} ${toBase64(bytes)}\n`;
}

/** Reads a signature line; undefined when it is none. Any length is read: a witness may sign by another algorithm. */
export function parseSignature(line: string): NoteSignature | undefined {
  const [, name, base64] = /^— ([!-*,-~]+) ([A-Za-z0-9+/]+=*)$/.exec(line) ?? [];
  const bytes = fromBase64(base64 ?? '');
  if (name === undefined || bytes === undefined || bytes.length <= 4) return undefined;
  return {
    name,
    keyId: Buffer.from(bytes.subarray(0, 4)).toString('hex'),
    signature: bytes.subarray(4),
  };
}
