const MAIN = '<main id="content">';
const END = '</main>';

/**
 * What is searched of a finished page: the words of its main part, with notes at its head. Drawings are left out, since their numbers
 * stand beside them, workings, since they say again what rows and readings say on pages of their own, and whatever else the search library
 * would read, carry along and not use.
 */
export function searchedPart(page: string, notes: string): string {
  const from = page.indexOf(MAIN);
  const to = page.lastIndexOf(END);
  if (from < 0 || to < from) throw new Error('a page has no main part: this is our bug');
  const main = bare(withoutDrawings(withoutWorkings(page.slice(from + MAIN.length, to))));
  return `<html><body><main data-pagefind-body>${notes}${main}</main></body></html>`;
}

/** Of a working the line that opens it is left. Workings may hold workings. */
function withoutWorkings(html: string): string {
  let kept = '';
  let from = 0;
  let at: 'outside' | 'opening' | 'inside' = 'outside';
  let depth = 0;
  for (const { 0: tag, index } of html.matchAll(/<\/summary>|<\/?details\b(?:"[^"]*"|[^">])*>/g)) {
    if (at === 'outside' && tag.startsWith('<details') && /\bclass="working"/.test(tag)) {
      at = 'opening';
    } else if (at === 'opening' && tag === '</summary>') {
      kept += html.slice(from, index + tag.length);
      at = 'inside';
    } else if (at === 'inside' && tag.startsWith('<details')) {
      depth += 1;
    } else if (at === 'inside' && tag === '</details>') {
      if (depth > 0) depth -= 1;
      else {
        from = index;
        at = 'outside';
      }
    }
  }
  return kept + html.slice(from);
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

/** Tags alone. A cell, a term, what is said of it, or what has an address of its own, is a word of its own, which the library can't see without its attributes. */
function bare(html: string): string {
  return html
    .replace(/<([a-z][\w-]*)\s((?:"[^"]*"|'[^']*'|[^"'>])*)>/gi, (_, name, attributes) =>
      /\bid="/.test(attributes) ? ` <${name}>` : `<${name}>`,
    )
    .replaceAll(/<\/(?:t[dh]|dt|dd|summary)>/g, '$& ');
}
