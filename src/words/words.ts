import { de } from './de.ts';
import { en } from './en.ts';
import type { Words } from './keys.ts';
import { pseudo } from './pseudo.ts';

export type { Words };

/** Words of one language, and the language itself: what was asked for may have none. */
export interface Tongue {
  readonly words: Words;
  /** Tag of the language that the words are in, with the region asked for when it is that language. */
  readonly tag: string;
}

const languages: Readonly<Record<string, Words>> = { en, de };

/** Tag of the pseudo-language, by the convention of the CLDR: every word of ours stands in brackets, so that what is left out shows. */
const PSEUDO = 'en-XA';

/** Languages that have words. */
export const languagesWithWords: readonly string[] = Object.keys(languages);

/**
 * Words for a language tag (BCP 47), by its first part: `de-CH` has those of `de`. A language without words is spoken to in English.
 */
export function wordsOf(tag: string): Words {
  return tongueOf(tag).words;
}

/** Words for a language tag, and which language they are in. */
export function tongueOf(tag: string): Tongue {
  if (tag === PSEUDO) return { words: pseudo, tag };
  const [first = ''] = tag.toLowerCase().split('-');
  const words = languages[first];
  return words ? { words, tag } : { words: en, tag: 'en' };
}
