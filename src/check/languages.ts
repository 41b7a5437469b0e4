import { type Problem, problemAt } from '../read/problem.ts';
import type { RawRecord } from '../read/raw.ts';
import { languagesWithWords, tongueOf } from '../words/words.ts';
import type { Rule } from './rule.ts';

/** What is wrong with the tag of the language that the site's own words should be in. */
export function languageProblems(tag: string, raw: RawRecord): Problem[] {
  if (!isLanguage(tag)) return [noLanguage(tag, raw)];
  if (tongueOf(tag).tag === tag) return [];
  const message = `language: there are no words for "${tag}" here, so the pages speak English around your texts`;
  const fix = `add src/words/${tag.split('-')[0]}.ts, or write "en"; languages here are ${languagesWithWords.join(', ')}`;
  return [
    { ...problemAt(raw.placeOf(['language']), 'site/words', message, fix), level: 'warning' },
  ];
}

const noLanguage = (tag: string, raw: RawRecord) =>
  problemAt(
    raw.placeOf(['language']),
    'site/language',
    `language: "${tag}" is no language tag`,
    'write one like "en-GB"',
  );

/** The language of a project's or entry's own texts is a tag of BCP 47. */
export const ownLanguageIsOne: Rule = ({ project }) =>
  [project.info, ...project.entries].flatMap((record) =>
    record?.value.language === undefined || isLanguage(record.value.language)
      ? []
      : [noLanguage(record.value.language, record.raw)],
  );

/** A tag that begins with a code of ISO 639: longer words are well formed too, and no language. */
function isLanguage(tag: string): boolean {
  try {
    return /^[a-z]{2,3}(-|$)/i.test(tag) && Intl.getCanonicalLocales(tag).length === 1;
  } catch {
    return false;
  }
}
