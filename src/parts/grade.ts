import { judgeInterval, type Verdict } from '../measure/verdict.ts';
import type { Finding, Grade } from '../model/kinds.ts';
import { type FoundKind, LIMITED } from './grade-scale.ts';
import { leastOf, type Remaining, remainingInterval } from './remaining.ts';

/** A finding with the thickness that was left at each place that was read there. */
export interface Found {
  readonly finding: Finding;
  readonly remaining: readonly Remaining[];
}

/** What one source's version of a part was found to be in a survey. */
export type Evidence = readonly Found[];

/** One limit of a grade held against the evidence. */
export type Test =
  | {
      readonly of: 'remaining';
      readonly limit: number;
      readonly least: Remaining | undefined;
      /** Whether something thin was found that nobody read. */
      readonly unread: boolean;
      readonly verdict: Verdict;
    }
  | {
      readonly of: 'filler' | 'holes';
      readonly limit: number;
      readonly area: Area;
      readonly verdict: Verdict;
    }
  | {
      readonly of: 'kinds';
      /** Findings that the grade does not allow. */
      readonly not: readonly FoundKind[];
      readonly verdict: Verdict;
    };

/** Share of a part's area in per cent: what was stated, and whether some was found without saying how much. */
export interface Area {
  readonly stated: number;
  readonly found: boolean;
  readonly unstated: boolean;
}

/** A grade held against the evidence. */
export interface Tried {
  readonly grade: Grade;
  readonly tests: readonly Test[];
  readonly verdict: Verdict;
}

/** The grade of a part: one, or several, best first, between which the uncertainty does not decide. */
export interface Graded {
  readonly grades: readonly Grade[];
  readonly decided: boolean;
  /** Every grade that was tried, best first, up to the first that is met. */
  readonly tried: readonly Tried[];
}

/**
 * The first grade, best first, whose limits are all proven to hold by the idea of ISO 14253-1. Better ones that are neither met
 * nor ruled out stand before it, undecided. The last grade takes what no other takes.
 */
export function gradeOf(evidence: Evidence, scale: readonly Grade[]): Graded {
  const all = scale.map((grade) => tryGrade(evidence, grade));
  const met = all.findIndex(({ verdict }) => verdict === 'meets');
  const tried = met < 0 ? all : all.slice(0, met + 1);
  const possible = tried.filter(({ verdict }) => verdict !== 'does not meet');
  const last = tried.at(-1);
  const grades = [...new Set([...possible, ...(last ? [last] : [])])].map(({ grade }) => grade);
  return { grades, decided: grades.length === 1, tried };
}

function tryGrade(evidence: Evidence, grade: Grade): Tried {
  const { remainingAtLeast, fillerAtMost, holesAtMost } = grade;
  const tests: Test[] = [
    ...(remainingAtLeast === undefined ? [] : [testRemaining(evidence, Number(remainingAtLeast))]),
    ...(fillerAtMost === undefined ? [] : [testArea(evidence, 'filler', Number(fillerAtMost))]),
    ...(holesAtMost === undefined ? [] : [testArea(evidence, 'holes', Number(holesAtMost))]),
    ...(isUnlimited(grade) ? [] : [testKinds(evidence, grade)]),
  ];
  return { grade, tests, verdict: together(tests.map(({ verdict }) => verdict)) };
}

/** A grade that states nothing at all takes everything. */
function isUnlimited({ remainingAtLeast, fillerAtMost, holesAtMost, allows }: Grade): boolean {
  return [remainingAtLeast, fillerAtMost, holesAtMost, allows].every((said) => said === undefined);
}

/** All must hold; one that is ruled out decides, one that is not decided leaves it open. */
function together(verdicts: readonly Verdict[]): Verdict {
  if (verdicts.includes('does not meet')) return 'does not meet';
  return verdicts.includes('undecided') ? 'undecided' : 'meets';
}

function testRemaining(evidence: Evidence, limit: number): Test {
  const remaining = evidence.flatMap((found) => found.remaining);
  const unread = evidence.some(
    (found) => found.finding.found === 'thin' && found.remaining.length === 0,
  );
  const verdicts = remaining.map((place): Verdict => {
    const interval = remainingInterval(place);
    return interval ? judgeInterval(interval, { lower: limit, upper: undefined }) : 'undecided';
  });
  const verdict = together([...verdicts, ...(unread ? (['undecided'] as const) : [])]);
  return { of: 'remaining', limit, least: leastOf(remaining), unread, verdict };
}

function testArea(evidence: Evidence, of: 'filler' | 'holes', limit: number): Test {
  const kind = of === 'filler' ? 'filler' : 'perforation';
  const found = evidence.flatMap(({ finding }) => (finding.found === kind ? [finding] : []));
  const area: Area = {
    stated: found.reduce((sum, finding) => sum + Number(finding.area ?? 0), 0),
    found: found.length > 0,
    unstated: found.some((finding) => finding.area === undefined),
  };
  return { of, limit, area, verdict: judgeArea(area, limit) };
}

// Areas are estimates by eye and carry no U; the slack is for sums such as 0.1 + 0.2 alone.
function judgeArea({ stated, unstated }: Area, limit: number): Verdict {
  if (stated > limit + 1e-9 || (unstated && limit === 0)) return 'does not meet';
  return unstated && limit < 100 ? 'undecided' : 'meets';
}

function testKinds(evidence: Evidence, { allows = [] }: Grade): Test {
  const free: readonly FoundKind[] = ['sound', ...LIMITED, ...allows];
  const not = [...new Set(evidence.map(({ finding }) => finding.found))].filter(
    (kind) => !free.includes(kind),
  );
  return { of: 'kinds', not, verdict: not.length > 0 ? 'does not meet' : 'meets' };
}
