import { oncePer } from '../book/once.ts';
import type { Entry, Project, View } from '../book/types.ts';
import { type Backtest, backtest } from './backtest.ts';
import { dayNumber } from './day-number.ts';
import { forecast } from './forecast.ts';
import type { Forecast, ForecastResult } from './forecast-types.ts';
import { forecastInputs } from './project-plan.ts';

/** The forecast of a view's day, from what was known on that day; drawn once. */
export const forecastOn: (view: View) => ForecastResult = oncePer((view) =>
  forecast(forecastInputs(view)),
);

/** An entry and what was forecast on its day. */
export interface EntryForecast {
  readonly entry: Entry;
  readonly result: ForecastResult;
}

/** How the forecast moved: that of each entry's day. */
export const forecastHistory: (project: Project) => readonly EntryForecast[] = oncePer((project) =>
  project.entries.map((entry) => ({ entry, result: forecastOn(project.asOf(entry.date)) })),
);

/** How the entries' forecasts of a phase came true; `undefined` stands for the whole. */
export interface PastRecord extends Backtest {
  readonly phase: string | undefined;
}

/** Compares the forecast of each entry with what came true: for every finished phase, and for the whole once it is finished. */
export function forecastRecord(project: Project): PastRecord[] {
  const { phases } = project.now;
  const made = forecastHistory(project).flatMap(({ result }) =>
    result.kind === 'forecast' ? [result] : [],
  );
  const days = phases.flatMap(({ finished }) => (finished ? [dayNumber(finished)] : []));
  const all = days.length === phases.length ? Math.max(...days) : undefined;
  const records = phases.flatMap(({ phase: { id }, finished }) =>
    finished ? [{ phase: id, ...backtest(rangesOf(made, id), dayNumber(finished)) }] : [],
  );
  const whole = made.map(({ asOf, finish }) => ({ asOf, ...finish }));
  return all === undefined || phases.length === 0
    ? records
    : [...records, { phase: undefined, ...backtest(whole, all) }];
}

function rangesOf(made: readonly Forecast[], phase: string): Parameters<typeof backtest>[0] {
  return made.flatMap(({ asOf, phases }) => {
    const range = phases.find(({ id }) => id === phase);
    return range === undefined ? [] : { asOf, low: range.low, high: range.high };
  });
}
