import type { Counts, Outcome } from './outcome.ts';

/** What becomes of each line, as a table for a terminal. */
export function describeOutcomes(outcomes: readonly Outcome[], width: number): string {
  const rows = outcomes.map((outcome) => [String(outcome.line), word(outcome), told(outcome)]);
  const widths = [0, 1].map((column) =>
    Math.max(...[['line', 'what'], ...rows].map((row) => row[column]?.length ?? 0)),
  );
  const [numbers = 0, words = 0] = widths;
  const print = ([line = '', what = '', text = '']: readonly string[]) => {
    const start = `${line.padStart(numbers)}  ${what.padEnd(words)}  `;
    return `${start}${text.replaceAll('\n', `\n${' '.repeat(start.length)}`)}`.trimEnd();
  };
  return [['line', 'what', 'row, or why not'], ...rows]
    .map((row) => print(row.map((text) => text)))
    .flatMap((text) => text.split('\n'))
    .map((text) => (text.length > width ? `${text.slice(0, width - 1)}…` : text))
    .join('\n');
}

/** The sum that must come out: nothing is lost. */
export function describeCounts(counts: Counts, adds: string): string {
  const { read, added, known, skipped, refused } = counts;
  return `${read} read = ${added} ${adds} + ${known} known + ${skipped} skipped + ${refused} refused`;
}

function word(outcome: Outcome): string {
  return outcome.is === 'added' ? 'add' : outcome.is;
}

function told(outcome: Outcome): string {
  const text = outcome.text.replace(/\s+/g, ' ');
  if (outcome.is === 'added')
    return `${rowText(outcome.row.fields)}${outcome.note ? `\n! ${outcome.note}` : ''}`;
  if (outcome.is === 'known')
    return outcome.gone
      ? `as ${outcome.id}, which is gone; remove its line from imported.txt to import it again`
      : `as ${outcome.id}: ${text}`;
  return `${outcome.why}\n${text}`;
}

const FIRST = ['date', 'amount', 'hours', 'kind', 'category', 'phase', 'what'];

/** A row in one line, what tells most first. */
export function rowText(fields: Readonly<Record<string, string>>): string {
  const names = [
    ...FIRST.filter((name) => name in fields),
    ...Object.keys(fields).filter((name) => !FIRST.includes(name)),
  ];
  return names
    .map((name) => (FIRST.includes(name) ? fields[name] : `${name}: ${fields[name]}`))
    .join('  ');
}
