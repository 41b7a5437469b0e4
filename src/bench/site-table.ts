import { growth } from './growth.ts';
import type { Build, SiteTimes } from './time-site.ts';

type Cell = (times: SiteTimes) => number;

interface Line {
  readonly what: string;
  readonly of: Cell;
  readonly decimals?: number;
  /** Whether an exponent says something of it. */
  readonly grows?: true;
}

const figures = (stage: string): Line => ({
  what: `${stage}, s`,
  of: (times) => times.figures.stages[stage] ?? Number.NaN,
  decimals: 2,
  grows: true,
});

const stage = (name: string, label = name): Line => ({
  what: `  of it ${label}, s`,
  of: ({ cold }) => cold.stages[name] ?? Number.NaN,
  decimals: 2,
  grows: true,
});

function build(what: string, of: (times: SiteTimes) => Build): Line[] {
  return [
    { what: `build, ${what}, s`, of: (times) => of(times).seconds, decimals: 1, grows: true },
    { what: '  of all cores, s', of: (times) => of(times).cpu, decimals: 1, grows: true },
    { what: '  memory at the most, MB', of: (times) => of(times).peak, grows: true },
  ];
}

const LINES: readonly Line[] = [
  { what: 'records', of: ({ rows }) => rows },
  { what: 'pages', of: ({ pages }) => pages },
  { what: 'bytes of the site, MB', of: ({ bytes }) => bytes / 1e6, decimals: 1 },
  ...['read', 'check', 'book', 'figures'].map(figures),
  { what: '  memory at the most, MB', of: (times) => times.figures.peak, grows: true },
  ...build('cold', ({ cold }) => cold),
  stage('read', 'read, check and book'),
  ...['photos', 'draws', 'pages', 'feeds', 'search', 'leaks'].map((name) => stage(name)),
  { what: 'sharp alone for the photos, s', of: ({ sharp }) => sharp.seconds, decimals: 2 },
  ...build('nothing changed', ({ warm }) => warm),
  ...build('a row of hours more', ({ afterHours }) => afterHours),
  ...build('a reading changed', ({ afterReading }) => afterReading),
  { what: 'bare Astro, cold, s', of: ({ bare }) => bare.seconds, decimals: 1, grows: true },
  { what: '  memory at the most, MB', of: ({ bare }) => bare.peak, grows: true },
  { what: 'ours / bare', of: ({ cold, bare }) => cold.seconds / bare.seconds, decimals: 2 },
  { what: '  bytes of bare Astro, MB', of: ({ bare }) => bare.bytes / 1e6, decimals: 1 },
  {
    what: '  for each MB of site',
    of: ({ cold, bytes, bare }) => cold.seconds / bytes / (bare.seconds / bare.bytes),
    decimals: 2,
  },
  { what: '  by seconds of all cores', of: ({ cold, bare }) => cold.cpu / bare.cpu, decimals: 2 },
  { what: 'unchanged / cold', of: ({ warm, cold }) => warm.seconds / cold.seconds, decimals: 2 },
  {
    what: 'a row more / cold',
    of: ({ afterHours, cold }) => afterHours.seconds / cold.seconds,
    decimals: 2,
  },
  {
    what: 'a reading changed / cold',
    of: ({ afterReading, cold }) => afterReading.seconds / cold.seconds,
    decimals: 2,
  },
];

/** Each number by its name, with the exponent p of time ~ (records + pages)^p where several sizes were measured. */
export function siteTable(all: readonly SiteTimes[]): string {
  const head = ['', ...all.map(({ size }) => size), 'p'];
  const lines = LINES.map(({ what, of, decimals = 0, grows }) => [
    what,
    ...all.map((times) => of(times).toFixed(decimals)),
    grows ? (exponent(all, of)?.toFixed(2) ?? '') : '',
  ]);
  return [head, ...lines]
    .map(
      ([what = '', ...cells]) => what.padEnd(34) + cells.map((cell) => cell.padStart(10)).join(''),
    )
    .join('\n');
}

/** How a number grows with records and pages together. */
export function exponent(all: readonly SiteTimes[], of: Cell): number | undefined {
  return growth(all.map((times) => ({ amount: times.rows + times.pages, seconds: of(times) })));
}
