/** Lines that a file may have: what is longer holds more than one idea. */
export const LONGEST = 300;

/** Files that are longer than they may be, with their lines. None is excused: words and tables are cut by area. */
export function longFiles(texts: ReadonlyMap<string, string>): string[] {
  return [...texts]
    .map(([file, text]) => [file, text.trimEnd().split('\n').length] as const)
    .filter(([, lines]) => lines > LONGEST)
    .map(([file, lines]) => `${file} has ${lines} lines`);
}
