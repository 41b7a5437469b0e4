/**
 * The known word that a mistyped one most likely means, or undefined when none is near.
 * Distance is optimal string alignment (insert, delete, replace, swap neighbours), at most a third of the word's length.
 */
export function nearest(word: string, known: Iterable<string>): string | undefined {
  const folded = word.toLowerCase();
  let best: string | undefined;
  let bestDistance = Math.max(1, Math.floor(word.length / 3)) + 1;
  for (const candidate of known) {
    if (Math.abs(candidate.length - word.length) >= bestDistance) continue;
    const distance = alignmentDistance(folded, candidate.toLowerCase(), bestDistance);
    if (distance < bestDistance) {
      best = candidate;
      bestDistance = distance;
    }
  }
  return best;
}

/** `did you mean "teardown"?`, or the whole choice when it is short, or undefined. */
export function suggest(word: string, known: readonly string[]): string | undefined {
  const near = nearest(word, known);
  if (near !== undefined) return `did you mean "${near}"?`;
  return known.length > 0 && known.length <= 12 ? `one of: ${known.join(', ')}` : undefined;
}

/** The distance where it is below a limit; where it is not, some number from the limit up. */
function alignmentDistance(a: string, b: string, limit: number): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  let lastLeast = 0;
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    let rowLeast = i;
    for (let j = 1; j <= b.length; j++) {
      const replaced = (last[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      let least = Math.min(replaced, (last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, (beforeLast[j - 2] ?? 0) + 1);
      row.push(least);
      if (least < rowLeast) rowLeast = least;
    }
    // Every way on goes through one of the last two rows, and no step makes it shorter.
    if (rowLeast >= limit && lastLeast >= limit) return limit;
    lastLeast = rowLeast;
    beforeLast = last;
    last = row;
  }
  return last[b.length] ?? 0;
}
