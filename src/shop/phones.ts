import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';
import { join } from 'node:path';
import { withLock } from '../write/lock.ts';
import { readJson, saveWhole } from './state-folder.ts';

/** A paired phone; its token is kept nowhere, only the hash of it. */
export interface Phone {
  readonly name: string;
  readonly hash: string;
  readonly paired: string;
}

/** Most phones of one workshop, so that a list stays one. */
const MOST_PHONES = 50;

const fileOf = (state: string) => join(state, 'phones.json');

/** Phones as they are paired now; the file is read each time, so that a revoked one is out at once. */
export async function phonesOf(state: string): Promise<readonly Phone[]> {
  return (await readJson<Phone[]>(fileOf(state))) ?? [];
}

/** Pairs a phone: a token of 256 random bits, and a name that no other phone has. */
export function addPhone(state: string, wanted: string, now: Date) {
  return alone(state, async () => {
    const phones = await phonesOf(state);
    if (phones.length >= MOST_PHONES) return undefined;
    const name = freeName(phoneName(wanted), new Set(phones.map((phone) => phone.name)));
    const token = randomBytes(32).toString('base64url');
    const phone = { name, hash: hashOf(token), paired: now.toISOString() };
    await saveWhole(fileOf(state), JSON.stringify([...phones, phone], undefined, 1));
    return { token, name };
  });
}

/** Takes a phone out; false when there is none of that name. */
export function revokePhone(state: string, name: string): Promise<boolean> {
  return alone(state, async () => {
    const phones = await phonesOf(state);
    const left = phones.filter((phone) => phone.name !== name);
    if (left.length === phones.length) return false;
    await saveWhole(fileOf(state), JSON.stringify(left, undefined, 1));
    return true;
  });
}

/** Pairing and revoking may happen in two terminals at once; neither may undo the other. */
async function alone<Result>(state: string, act: () => Promise<Result>): Promise<Result> {
  const done = await withLock(state, 'phones', async () => ({ result: await act() }));
  if ('busy' in done) throw new Error(done.busy);
  return done.result;
}

/** The phone that a token belongs to. Every hash is compared, in the same time whether it fits or not. */
export function phoneOf(phones: readonly Phone[], token: string): Phone | undefined {
  const hash = Buffer.from(hashOf(token));
  return phones.filter((phone) => timingSafeEqual(Buffer.from(phone.hash), hash)).at(0);
}

const hashOf = (token: string) => createHash('sha256').update(token).digest('hex');

/** A name that can be typed in a terminal. */
function phoneName(wanted: string): string {
  const plain = wanted
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
  return plain.slice(0, 30) || 'phone';
}

function freeName(name: string, taken: ReadonlySet<string>): string {
  if (!taken.has(name)) return name;
  let number = 2;
  while (taken.has(`${name}-${number}`)) number++;
  return `${name}-${number}`;
}
