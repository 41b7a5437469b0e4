/** Text that goes in at an offset of the text as it was. */
export interface Insertion {
  readonly at: number;
  readonly text: string;
}

/** What an addition puts into a file, and each added row as it will stand there. */
export interface Appended {
  readonly insertions: readonly Insertion[];
  readonly rows: readonly string[];
}

/** The text with the insertions, which stand in the order of their offsets. Nothing that was there is left out or changed. */
export function insert(text: string, insertions: readonly Insertion[]): string {
  let from = 0;
  let result = '';
  for (const { at, text: added } of insertions) {
    result += text.slice(from, at) + added;
    from = at;
  }
  return result + text.slice(from);
}

/** The text as it was before the insertions, or undefined where they no longer stand in it. */
export function takeOut(text: string, insertions: readonly Insertion[]): string | undefined {
  let from = 0;
  let shift = 0;
  let result = '';
  for (const { at, text: added } of insertions) {
    const start = at + shift;
    if (!text.startsWith(added, start)) return undefined;
    result += text.slice(from, start);
    from = start + added.length;
    shift += added.length;
  }
  return result + text.slice(from);
}
