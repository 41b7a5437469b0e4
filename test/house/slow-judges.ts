import { isGap, type Mutant, type RawReport } from './mutation-report.ts';

/** Where the mistakes lie that nobody noticed, in the form that the next run is told which to plant. */
export function passed(folder: string, { files }: RawReport): string[] {
  const places = Object.entries(files).flatMap(([file, { source, mutants }]) =>
    mutants
      .filter((mutant) => isGap(file, source, mutant))
      .map(({ location: { start, end } }) => {
        // A report counts columns from one, a run from zero.
        const range = `${start.line}:${start.column - 1}-${end.line}:${end.column - 1}`;
        return `${file.replace(`src/${folder}/`, '')}:${range}`;
      }),
  );
  return [...new Set(places)];
}

/** A report in which what nobody noticed has the judgement of a second run. */
export function judgedAgain(first: RawReport, second: RawReport): RawReport {
  const keyOf = ({ location, replacement }: Mutant) => JSON.stringify([location, replacement]);
  const files = Object.entries(first.files).map(([file, { source, mutants }]) => {
    const again = new Map(second.files[file]?.mutants.map((mutant) => [keyOf(mutant), mutant]));
    const judged = mutants.map((mutant) =>
      isGap(file, source, mutant) ? (again.get(keyOf(mutant)) ?? mutant) : mutant,
    );
    return [file, { source, mutants: judged }] as const;
  });
  return { files: Object.fromEntries(files) };
}
