import type { Words } from './keys.ts';

/** A text that is made where no language is known: as it is, or told once the words are there. */
export type Said = string | ((words: Words) => string);

/** A said text in the language of the words. */
export function say(said: Said, words: Words): string {
  return typeof said === 'string' ? said : said(words);
}
