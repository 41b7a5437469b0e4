/** Lines and branches of one file, as the summary tells them. */
export interface FileCoverage {
  readonly lines: Counted;
  readonly branches: Counted;
}

interface Counted {
  readonly total: number;
  readonly covered: number;
}

/** One row a folder of `src`, files of its own first: how many lines and branches tests came by. */
export function coverageTable(files: ReadonlyMap<string, FileCoverage>): string[] {
  const byFolder = Map.groupBy(files, ([file]) => folderOf(file));
  const rows = [...byFolder]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([folder, some]) =>
      row(
        folder,
        some.map(([, file]) => file),
      ),
    );
  return [
    `${'folder'.padEnd(14)}${'files'.padStart(6)}${'lines'.padStart(9)}${'branches'.padStart(10)}`,
    ...rows,
    row('all', [...files.values()]),
  ];
}

const folderOf = (file: string) => /(?:^|\/)src\/([^/]+)\//.exec(file)?.[1] ?? 'src';

function row(name: string, files: readonly FileCoverage[]): string {
  const share = (which: keyof FileCoverage) => {
    const sum = (what: keyof Counted) => files.reduce((all, file) => all + file[which][what], 0);
    return sum('total') === 0 ? '–' : `${((100 * sum('covered')) / sum('total')).toFixed(1)} %`;
  };
  const count = String(files.length).padStart(6);
  return `${name.padEnd(14)}${count}${share('lines').padStart(9)}${share('branches').padStart(10)}`;
}
