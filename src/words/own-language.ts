import { directionOf } from './direction.ts';

/** Attributes of an element whose text is in another language than its page; none when it is in the same. */
export interface OwnLanguage {
  readonly lang?: string;
  readonly dir?: 'ltr' | 'rtl';
}

/** What an element must say about its text's language inside a page in the language `page` (BCP 47). */
export function ownLanguage(tag: string, page: string): OwnLanguage {
  if (first(tag) === first(page)) return {};
  const dir = directionOf(tag);
  return dir === directionOf(page) ? { lang: tag } : { lang: tag, dir };
}

const first = (tag: string) => tag.toLowerCase().split('-')[0];
