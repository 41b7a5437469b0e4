import { type Said, say } from '../../src/words/said.ts';
import { wordsOf } from '../../src/words/words.ts';

/** A said text in English. */
export function toldIn(said: Said | undefined): string | undefined {
  return said === undefined ? undefined : say(said, wordsOf('en'));
}

/** Anything with each said text in it told in English, so that two can be compared; maps as lists of pairs. */
export function told(value: unknown): unknown {
  if (typeof value === 'function') return toldIn(value as Said);
  if (Array.isArray(value)) return value.map(told);
  if (value instanceof Map) return [...value].map(told);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, told(inner)]));
}
