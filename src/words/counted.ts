/** How many there are of something, in words that fit one as well as many: `1 entry`, `2 entries`. */
export function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}
