import type { DayNumber } from './day-number.ts';

/** What was forecast on a day: the finish lies from `low` to `high` in 80 % of cases. */
export interface PastForecast {
  readonly asOf: DayNumber;
  readonly low: DayNumber;
  readonly high: DayNumber;
}

/** How often forecasts held what came true. */
export interface Backtest {
  readonly held: number;
  readonly missedEarly: number;
  readonly missedLate: number;
  /** Held, of all; undefined when there was no forecast before the finish. */
  readonly share: number | undefined;
}

/** Compares past forecasts with the true finish; a forecast made on or after that day foretells nothing and does not count. */
export function backtest(forecasts: readonly PastForecast[], finish: DayNumber): Backtest {
  const counted = forecasts.filter(({ asOf }) => asOf < finish);
  const missedEarly = counted.filter(({ low }) => finish < low).length;
  const missedLate = counted.filter(({ high }) => finish > high).length;
  const held = counted.length - missedEarly - missedLate;
  return {
    held,
    missedEarly,
    missedLate,
    share: counted.length === 0 ? undefined : held / counted.length,
  };
}
