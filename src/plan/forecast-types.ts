import type { Said } from '../words/said.ts';
import type { WorkingCalendar } from './calendar.ts';
import type { DayNumber } from './day-number.ts';
import type { Link } from './network.ts';
import type { ThreePoint } from './three-point.ts';

/** A phase as a forecast sees it. */
export interface ForecastPhase {
  readonly id: string;
  /** Planned minutes: one number, or three. */
  readonly planned: number | ThreePoint;
  /** Minutes worked up to the day of the forecast. */
  readonly spent: number;
  readonly state: 'finished' | 'under way' | 'not started';
  /** The day it was finished. */
  readonly finished?: DayNumber;
  /** Lags in days. */
  readonly after: readonly Link[];
}

/** Something that holds phases back until a day between two; the same day twice when it is known. */
export interface ForecastWait {
  readonly id: string;
  readonly phases: readonly string[];
  readonly from: DayNumber;
  readonly to: DayNumber;
}

/** What a forecast is made from. */
export interface ForecastInputs {
  readonly phases: readonly ForecastPhase[];
  readonly waits: readonly ForecastWait[];
  /** Minutes of each of the last weeks. */
  readonly pace: readonly number[];
  readonly calendar: WorkingCalendar;
  /** The last day whose work is counted in; what is left begins on the next. */
  readonly asOf: DayNumber;
  readonly seed: number;
  readonly draws: number;
}

/** Values that 10, 50 and 90 % of the draws do not exceed. */
export interface Range {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/** What the finish hangs on. */
export interface ForecastDriver {
  readonly by: 'phase' | 'wait' | 'pace';
  /** Undefined for the pace, which is one. */
  readonly id: string | undefined;
  /** Share of draws in which a little more of it would have moved the finish; undefined for the pace, which always would. */
  readonly share: number | undefined;
  /** Spearman's rank correlation with the finish over the draws; undefined where it is the same in all. */
  readonly correlation: number | undefined;
}

/** Some days, both ends included, and how many draws finish on one of them; the outer bars hold what lies beyond, too. */
export interface HistogramBar {
  readonly from: DayNumber;
  readonly to: DayNumber;
  readonly draws: number;
}

/** When it will be done, as far as can be told. */
export interface Forecast {
  readonly kind: 'forecast';
  readonly asOf: DayNumber;
  /** Days. */
  readonly finish: Range;
  /** Minutes still to be worked. */
  readonly left: Range;
  /** Days, for every phase that is not finished, in the order of the network. */
  readonly phases: readonly ({ readonly id: string } & Range)[];
  /** Most often deciding first. */
  readonly drivers: readonly ForecastDriver[];
  readonly histogram: readonly HistogramBar[];
  /** Actual over planned of each finished phase: what the estimates were adjusted by. */
  readonly ratios: readonly PastRatio[];
}

/** How a finished phase came out against its plan. */
export interface PastRatio {
  readonly id: string;
  readonly ratio: number;
}

/** A forecast, or why there is none. */
export type ForecastResult =
  | Forecast
  | { readonly kind: 'finished'; readonly day: DayNumber | undefined }
  | { readonly kind: 'loop'; readonly ids: readonly string[] }
  | { readonly kind: 'not yet'; readonly reason: Said };
