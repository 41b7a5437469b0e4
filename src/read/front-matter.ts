/** An entry in its two parts. */
export interface CutEntry {
  /** The YAML between the two lines `---`; it starts on the second line of the file. */
  readonly frontMatter: string;
  /** The whole entry with spaces where the front matter was, so that lines and columns are those of the file. */
  readonly rest: string;
}

/**
 * Cuts an entry where the renderer cuts it: at the first line that begins with `---` or `+++`, whatever follows there. So nothing can
 * stand in what is checked as front matter and be rendered as text. A number is the line that is more than `---` alone.
 */
export function cutFrontMatter(text: string): CutEntry | number | undefined {
  const start = /^---\r?\n/.exec(text)?.[0].length;
  if (start === undefined) return undefined;
  const end = /^(?:---|\+\+\+).*/m.exec(text.slice(start));
  if (end === null) return undefined;
  const at = start + end.index;
  if (!/^---[ \t]*\r?$/.test(end[0])) return text.slice(0, at).split('\n').length;
  const closed = at + end[0].length;
  return {
    frontMatter: text.slice(start, at),
    rest: text.slice(0, closed).replace(/[^\r\n]/g, ' ') + text.slice(closed),
  };
}
