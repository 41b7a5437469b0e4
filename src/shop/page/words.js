// The page's words, in the language of the site.
import { keep, kept } from './store.js';

export let words;
export let names;
export let language;
export let siteTitle;

/** Loads the words; the ones of last time stand in where the workshop is not reached. */
export async function loadWords() {
  const told = await fetch('/words.json')
    .then((answer) => answer.json())
    .catch(() => kept('words'));
  ({ words, names, language, title: siteTitle } = told);
  await keep('words', told).catch(() => {});
}

/** Puts values into the `{places}` of a text. */
export const put = (text, values) => text.replace(/\{(\w+)\}/g, (_, name) => values[name]);

/** Name of a word of the ledger, as the site says it. */
export const nameOf = (group, key) => names[group]?.[key] ?? key;
