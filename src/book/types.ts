import type { CostRow, StandingRate } from '../cost/cost-row.ts';
import type { WorkedRow } from '../hours/hours.ts';
import type { Correction } from '../ledger/corrections.ts';
import type { Standing } from '../ledger/standing.ts';
import type { LedgerMarks } from '../mark/ledger-marks.ts';
import type { Measured } from '../measure/reading.ts';
import type { Recipe } from '../measure/recipe.ts';
import type { SpecFigures } from '../measure/spec-figures.ts';
import type { ValuesBySpec } from '../measure/worked.ts';
import type {
  BudgetLine,
  EntryInfo,
  Instrument,
  Order,
  Part,
  Phase,
  PhotoRecord,
  ProjectInfo,
  Search,
  Site,
  Source,
  Spec,
} from '../model/kinds.ts';
import type { Money } from '../money/money.ts';
import type { PartState } from '../parts/state.ts';
import type { PhaseFigures } from '../plan/phases.ts';
import type { UsedComponent } from '../read/mdx.ts';
import type { Problem } from '../read/problem.ts';
import type { Day } from '../time/day.ts';
import type { Minutes } from '../time/duration.ts';
import type { Decisions } from './decisions.ts';
import type { Breakdown } from './figure.ts';

/** An entry of the log, with its place among the others. */
export interface Entry extends EntryInfo {
  /** Name of its page: the file name without its ending. */
  readonly slug: string;
  /** Path of its file inside the content folder. */
  readonly file: string;
  /** Its number in the log, from 1. */
  readonly number: number;
  readonly components: readonly UsedComponent[];
  /** Addresses of the links in its text, as written. */
  readonly links: readonly string[];
  readonly words: number;
}

/**
 * One machine being rebuilt, with its rows in order of date, those that a later row replaced among them. Rows that could not be
 * understood are not in it.
 */
export interface Project extends Decisions {
  readonly id: string;
  readonly info: ProjectInfo;
  readonly currency: string;
  readonly sources: readonly Source[];
  readonly phases: readonly Phase[];
  readonly specs: readonly Spec[];
  readonly instruments: readonly Instrument[];
  /** Parts as the newest rows have them; each goes by the id of its first row. */
  readonly parts: readonly Part[];
  /** Every row of a part, those that were replaced too. */
  readonly partRows: readonly PartRow[];
  readonly hours: readonly WorkedRow[];
  readonly costs: readonly CostRow[];
  readonly readings: readonly Measured[];
  /** Values of every spec by its id, read or worked out, in order of date. */
  readonly values: ValuesBySpec;
  /** The same as they were known on a day, before later corrections of readings. */
  valuesKnownOn(day: Day): ValuesBySpec;
  /** How each derived spec is worked out. */
  readonly recipes: ReadonlyMap<string, Recipe>;
  readonly rates: readonly StandingRate[];
  readonly searches: readonly (Search & Standing)[];
  /** Every row of an order goes by the id of its first. */
  readonly orders: readonly OrderRow[];
  readonly budgets: readonly (BudgetLine & Standing)[];
  /** Rows that no longer count, in order of the day that was said. */
  readonly corrections: readonly Correction[];
  readonly entries: readonly Entry[];
  /** Files in `photos/`, without those whose record has a mistake. */
  readonly photos: readonly string[];
  /** Its marks and the rows under them as published; undefined before the first mark. */
  readonly marks: LedgerMarks | undefined;
  /** What is known of photos, where the builder wrote it down. */
  readonly photoRecords: readonly PhotoRecord[];
  /** Earliest and latest day that anything is dated; the latest is the day that the site calls today. */
  readonly firstDay: Day;
  readonly lastDay: Day;
  /** Everything as it stood at the end of a day. */
  asOf(day: Day): View;
  /** As of `lastDay`. */
  readonly now: View;
}

/** A row of a part: `id` is that of the part's first row, `rowId` its own. */
export interface PartRow extends Part, Standing {
  readonly rowId: string;
}

/** A row of an order: `id` is that of the order's first row, `rowId` its own. */
export interface OrderRow extends Order, Standing {
  readonly rowId: string;
}

/** A part and its state on the day of the view. */
export interface PartOnDay {
  readonly part: Part;
  readonly state: PartState;
  readonly since: Day | undefined;
}

/** A project as it stood at the end of a day. */
export interface View {
  readonly project: Project;
  readonly day: Day;
  readonly hours: readonly WorkedRow[];
  readonly costs: readonly CostRow[];
  readonly searches: readonly Search[];
  readonly parts: readonly PartOnDay[];
  readonly phases: readonly PhaseFigures[];
  readonly hoursByPhase: Breakdown<Minutes, WorkedRow>;
  readonly hoursByWork: Breakdown<Minutes, WorkedRow>;
  readonly hoursByPerson: Breakdown<Minutes, WorkedRow>;
  readonly costsByCategory: Breakdown<Money, CostRow>;
  readonly costsByPhase: Breakdown<Money, CostRow>;
  readonly costsBySource: Breakdown<Money, CostRow>;
  readonly partsByState: ReadonlyMap<PartState, readonly PartOnDay[]>;
  readonly partsBySource: ReadonlyMap<string, readonly PartOnDay[]>;
  readonly specs: readonly SpecFigures[];
  spec(id: string): SpecFigures | undefined;
}

/** All that a content folder holds, read once and never changed. */
export interface Book {
  readonly site: Site | undefined;
  readonly projects: readonly Project[];
  readonly problems: readonly Problem[];
  project(id: string): Project | undefined;
}
