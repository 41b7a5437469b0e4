import { EQUIVALENT } from './equivalent.ts';

/** What one mutation run found. */
export interface Report {
  readonly folder: string;
  readonly planted: number;
  /** Mistakes that made a test fail, or go round for ever. */
  readonly noticed: number;
  readonly percent: number;
  /** How many of those that nobody noticed are no mistakes, by the list. */
  readonly equivalent: number;
  /** The others that nobody noticed, with place and what stood there instead. */
  readonly survivors: readonly string[];
}

/** The part of the report's schema that is read here. */
export interface RawReport {
  readonly files: Readonly<
    Record<string, { readonly source: string; readonly mutants: readonly Mutant[] }>
  >;
}

/** A planted mistake and what became of it. */
export interface Mutant {
  readonly status: string;
  readonly replacement?: string;
  readonly location: { readonly start: Point; readonly end: Point };
}

interface Point {
  readonly line: number;
  readonly column: number;
}

const NOTICED = ['Killed', 'Timeout'];
const MISSED = ['Survived', 'NoCoverage'];

/** Counts as the report's own tool does: what no program could be made of, and what was left out, is neither. */
export function readReport(folder: string, { files }: RawReport): Report {
  const all = Object.entries(files).flatMap(([file, { source, mutants }]) =>
    mutants.map((mutant) => ({ file, source, mutant })),
  );
  const noticed = all.filter(({ mutant }) => NOTICED.includes(mutant.status)).length;
  const missed = all.filter(({ mutant }) => MISSED.includes(mutant.status));
  const planted = noticed + missed.length;
  const gaps = missed.filter(({ file, source, mutant }) => isGap(file, source, mutant));
  return {
    folder,
    planted,
    noticed,
    percent: planted === 0 ? 0 : (100 * noticed) / planted,
    equivalent: missed.length - gaps.length,
    survivors: gaps.map(({ file, source, mutant }) => told(file, source, mutant)),
  };
}

/** Whether nobody noticed a mistake that is one. */
export function isGap(file: string, source: string, mutant: Mutant): boolean {
  return MISSED.includes(mutant.status) && !isEquivalent(file, source, mutant);
}

/** One report of several runs, each of other files. */
export function together(reports: readonly RawReport[]): RawReport {
  return { files: Object.fromEntries(reports.flatMap(({ files }) => Object.entries(files))) };
}

/** What stood there, as far as it stands on one line. */
function wasThere(source: string, mutant: Mutant): string {
  const { start, end } = mutant.location;
  return lineOf(source, mutant).slice(
    start.column - 1,
    end.line === start.line ? end.column - 1 : undefined,
  );
}

const lineOf = (source: string, { location }: Mutant) =>
  source.split('\n')[location.start.line - 1] ?? '';

function isEquivalent(file: string, source: string, mutant: Mutant): boolean {
  const was = wasThere(source, mutant);
  const line = lineOf(source, mutant);
  return EQUIVALENT.some(
    (one) =>
      one.file === file &&
      one.was === was &&
      one.instead === mutant.replacement &&
      line.includes(one.beside),
  );
}

function told(file: string, source: string, mutant: Mutant): string {
  const { location, replacement, status } = mutant;
  const { start } = location;
  const was = wasThere(source, mutant);
  const how = status === 'NoCoverage' ? ' (no test comes here)' : '';
  const one = (text: string) => text.replace(/\s+/g, ' ').trim();
  return `${file}:${start.line}:${start.column} ${one(was)} → ${one(replacement ?? '')}${how}`;
}
