/** How much a made-up content folder holds; all but `projects` is for each project. */
export interface Size {
  readonly projects: number;
  readonly entries: number;
  /** Ledger rows of all kinds together. */
  readonly rows: number;
  /** Groups of specs; each has eight that are measured and sixteen that are worked out of them. */
  readonly systems: number;
  readonly photos: number;
}

/** The sizes that a made-up content folder is written in. */
const SIZES = {
  M: { projects: 5, entries: 200, rows: 10_000, systems: 25, photos: 8 },
  L: { projects: 20, entries: 150, rows: 15_000, systems: 38, photos: 8 },
} as const satisfies Record<string, Size>;

/** `M` or `L`, or a part of one, `M/8`: an eighth of the rows, entries and specs in as many projects. */
export function sizeNamed(name: string): Size | undefined {
  const [, letter = '', parts = '1'] = /^([ML])(?:\/([1-9]\d?))?$/.exec(name) ?? [];
  if (!Object.hasOwn(SIZES, letter)) return undefined;
  const size = SIZES[letter as keyof typeof SIZES];
  const part = (count: number) => Math.max(2, Math.round(count / Number(parts)));
  return {
    projects: size.projects,
    entries: part(size.entries),
    rows: part(size.rows),
    systems: part(size.systems),
    photos: size.photos,
  };
}

/** What of a hundred rows each kind has, as in a ledger that was kept for years; hours take the rest. */
const SHARES = {
  readings: 40,
  costs: 18,
  parts: 5,
  searches: 4,
  orders: 1.2,
  preparations: 0.7,
  waits: 0.6,
  budgets: 0.4,
  withdrawals: 0.1,
} as const;

export type RowCounts = Readonly<Record<keyof typeof SHARES | 'hours', number>>;

/** Rows of each kind in one project. */
export function rowCounts({ rows }: Size): RowCounts {
  const counts = Object.fromEntries(
    Object.entries(SHARES).map(([kind, share]) => [kind, Math.ceil((rows * share) / 100)]),
  ) as Record<keyof typeof SHARES, number>;
  const taken = Object.values(counts).reduce((sum, count) => sum + count, 0);
  return { ...counts, hours: rows - taken };
}
