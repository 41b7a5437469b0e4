/** Which way a language is written. */
export function directionOf(tag: string): 'ltr' | 'rtl' {
  const [first = ''] = tag.toLowerCase().split('-');
  return FROM_THE_RIGHT.has(first) || /-(arab|hebr|thaa|syrc|nkoo|adlm)\b/i.test(tag)
    ? 'rtl'
    : 'ltr';
}

/** Languages that are written from right to left (script metadata of the CLDR). */
const FROM_THE_RIGHT = new Set(['ar', 'ckb', 'dv', 'fa', 'he', 'ks', 'ps', 'sd', 'ug', 'ur', 'yi']);
