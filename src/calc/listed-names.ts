/** Names that the n values of a list have in a formula: `x1`, `x2` … */
export function listedNames(n: number): string[] {
  return Array.from({ length: n }, (_, index) => `x${index + 1}`);
}
