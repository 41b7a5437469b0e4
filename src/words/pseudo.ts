import { en } from './en.ts';

/** The English words, each text in brackets: a page in this language shows what does not come from the words. */
export const pseudo: typeof en = bracket(en);

function bracket<Part>(part: Part): Part {
  if (typeof part === 'string') return `⟦${part}⟧` as Part;
  if (typeof part === 'function') {
    const say = part as unknown as (...given: unknown[]) => unknown;
    return ((...given: unknown[]) => bracket(say(...given))) as Part;
  }
  if (Array.isArray(part)) return part.map(bracket) as Part;
  if (typeof part !== 'object' || part === null) return part;
  return Object.fromEntries(
    Object.entries(part).map(([key, inner]) => [key, bracket(inner)]),
  ) as Part;
}
