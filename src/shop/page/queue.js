// Entries on their way: waiting → trying → sent, or refused and back to waiting once mended.
import { entered, putEntry, removeEntry } from './store.js';

const listeners = new Set();

export const onQueue = (listener) => listeners.add(listener);

async function changed() {
  const entries = await entered();
  for (const listener of listeners) listener(entries);
}

/** An id that no other phone makes: 128 random bits. */
export function newItemId() {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** Keeps an entry; when this returns it is on the phone's disk. */
export async function addEntry({ project, kind, fields, picture }) {
  const entry = { id: newItemId(), project, kind, fields, state: 'waiting', made: Date.now() };
  if (picture) entry.picture = { id: newItemId(), ...picture, sent: false };
  await putEntry(entry);
  await changed();
}

/** Puts a mended entry back, in its old place. */
export async function mendEntry(entry, { fields, picture }) {
  const next = { ...entry, fields, state: 'waiting', problems: undefined };
  if (picture) next.picture = { id: newItemId(), ...picture, sent: false };
  await putEntry(next);
  await changed();
}

export async function updateEntry(entry) {
  await putEntry(entry);
  await changed();
}

export async function dropEntry(entry) {
  await removeEntry(entry.n);
  await changed();
}

/** What is counted on the title block. */
export function countOf(entries) {
  const of = (...states) => entries.filter(({ state }) => states.includes(state)).length;
  return { kept: of('waiting', 'trying', 'refused'), refused: of('refused'), sent: of('sent') };
}
