import { HASH_BYTES, type Hash } from './hash.ts';

/** The hashes of a proof in the order in which RFC 9162 lists them: from the leaves up. */
export type Proof = readonly Hash[];

/** Whether a proof holds; if not, the name of what is wrong. */
export type Verified<Failure extends string> =
  | { readonly holds: true }
  | { readonly holds: false; readonly failure: Failure };

/** The answer when everything fits. */
export const HOLDS = { holds: true } as const;

/** The answer when something does not fit. */
export function fails<Failure extends string>(failure: Failure): Verified<Failure> {
  return { holds: false, failure };
}

/** Whether a value can be a size or an index: a whole number from 0 up that a double holds exactly. */
export function isCount(value: unknown): value is number {
  return Number.isSafeInteger(value) && (value as number) >= 0;
}

/** Whether a value is a hash by its kind and length. */
export function isHash(value: unknown): value is Hash {
  return value instanceof Uint8Array && value.length === HASH_BYTES;
}

/** Whether a value is a list of hashes. */
export function isProof(value: unknown): value is Proof {
  return Array.isArray(value) && value.every(isHash);
}

// "Right-shift" and "LSB" of RFC 9162 on doubles: the bit operators would cut a size to 32 bits.

/** The number shifted right by one. */
export const half = (number: number): number => Math.floor(number / 2);

/** Whether the least significant bit is set. */
export const isOdd = (number: number): boolean => number % 2 === 1;
