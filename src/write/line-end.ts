/** How the lines of a text end: as its last line does, so that an addition goes on as the file ends. */
export function lineEndOf(text: string): '\n' | '\r\n' {
  const last = text.lastIndexOf('\n');
  return last > 0 && text[last - 1] === '\r' ? '\r\n' : '\n';
}

/** A byte order mark, where the text has one, and what follows it. */
export function withoutMark(text: string): { readonly mark: string; readonly body: string } {
  const mark = text.startsWith('\ufeff') ? '\ufeff' : '';
  return { mark, body: text.slice(mark.length) };
}
