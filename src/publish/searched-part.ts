const MAIN = '<main id="content">';
const END = '</main>';

/**
 * What is searched of a finished page: the words of its main part, with notes at its head. Drawings are left out, since their numbers
 * stand beside them, and so is whatever else the search library would read, carry along and not use.
 */
export function searchedPart(page: string, notes: string): string {
  const from = page.indexOf(MAIN);
  const to = page.lastIndexOf(END);
  if (from < 0 || to < from) throw new Error('a page has no main part: this is our bug');
  const main = bare(withoutDrawings(page.slice(from + MAIN.length, to)));
  return `<html><body><main data-pagefind-body>${notes}${main}</main></body></html>`;
}

/** Drawings may hold drawings. */
function withoutDrawings(html: string): string {
  let kept = '';
  let from = 0;
  let depth = 0;
  for (const { 0: tag, index } of html.matchAll(/<\/?svg\b(?:"[^"]*"|[^">])*>/g)) {
    if (depth === 0) kept += html.slice(from, index);
    if (tag.startsWith('</')) depth -= 1;
    else if (!tag.endsWith('/>')) depth += 1;
    from = index + tag.length;
  }
  return kept + html.slice(from);
}

/** Tags alone. A cell, or what has an address of its own, is a word of its own, which the library can't see without its attributes. */
function bare(html: string): string {
  return html
    .replace(/<([a-z][\w-]*)\s((?:"[^"]*"|'[^']*'|[^"'>])*)>/gi, (_, name, attributes) =>
      /\bid="/.test(attributes) ? ` <${name}>` : `<${name}>`,
    )
    .replaceAll(/<\/t[dh]>/g, '$& ');
}
