import type { Said } from '../words/said.ts';
import {
  type Draws,
  drawMinutes,
  drawPace,
  drawWaits,
  meansOf,
  pastRatios,
} from './forecast-draws.ts';
import { columnOf, correlation, histogramOf, rangeOf, ranksOf } from './forecast-summary.ts';
import type {
  Forecast,
  ForecastDriver,
  ForecastInputs,
  ForecastResult,
  ForecastWait,
  PastRatio,
} from './forecast-types.ts';
import { type OpenNetwork, openNetwork } from './open-network.ts';
import { inOrder } from './order.ts';
import { type DrawnFinishes, runDraws } from './run-draws.ts';

/** Finished phases, and weeks of pace, below which past and pace say too little (our choice, no source). */
export const LEAST_FINISHED = 2;
export const LEAST_WEEKS = 4;

const HORIZON_YEARS = 20;
const HORIZON = 7 * Math.round((HORIZON_YEARS * 365.25) / 7);

/** When it will be done: what is left, by the builder's own past, over the builder's own pace, drawn many times. */
export function forecast(inputs: ForecastInputs): ForecastResult {
  const order = inOrder(inputs.phases);
  if (order.kind === 'loop') return order;
  const ratios = pastRatios(inputs.phases);
  const network = openNetwork(order.items, inputs.waits, inputs.asOf);
  if (network.phases.length === 0) return { kind: 'finished', day: lastFinish(inputs) };
  const reason = whyNotYet(inputs, ratios);
  if (reason !== undefined) return { kind: 'not yet', reason };

  const draws: Draws = {
    count: inputs.draws,
    minutes: drawMinutes(
      network.phases,
      ratios.map(({ ratio }) => ratio),
      inputs,
    ),
    waits: drawWaits(inputs.waits, inputs.asOf, inputs),
    pace: drawPace(inputs.pace, inputs),
  };
  const drawn = runDraws(network, draws, dayShares(inputs));
  const result = summarise(inputs, { network, draws, drawn, ratios });
  if (result.finish.high < inputs.asOf + HORIZON) return result;
  return {
    kind: 'not yet',
    reason: ({ plan }) => plan.forecast.reasons.tooFar(inputs.pace.length, HORIZON_YEARS),
  };
}

function lastFinish({ phases }: ForecastInputs): number | undefined {
  const days = phases.flatMap(({ finished }) => finished ?? []);
  return days.length === 0 ? undefined : Math.max(...days);
}

function whyNotYet(
  { pace, calendar }: ForecastInputs,
  ratios: readonly PastRatio[],
): Said | undefined {
  if (ratios.length < LEAST_FINISHED)
    return ({ plan }) => plan.forecast.reasons.fewFinished(ratios.length, LEAST_FINISHED);
  if (pace.length < LEAST_WEEKS)
    return ({ plan }) => plan.forecast.reasons.fewWeeks(pace.length, LEAST_WEEKS);
  if (pace.every((minutes) => minutes === 0))
    return ({ plan }) => plan.forecast.reasons.noPace(pace.length);
  return calendar.weekMinutes > 0 ? undefined : ({ plan }) => plan.forecast.reasons.noTime;
}

/** How much of a usual week each day after the day of the forecast has room for. */
function dayShares({ calendar, asOf }: ForecastInputs): Float64Array {
  return Float64Array.from(
    { length: HORIZON },
    (_, index) => calendar.minutesOn(asOf + 1 + index) / calendar.weekMinutes,
  );
}

interface Made {
  readonly network: OpenNetwork;
  readonly draws: Draws;
  readonly drawn: DrawnFinishes;
  readonly ratios: readonly PastRatio[];
}

function summarise(inputs: ForecastInputs, made: Made): Forecast {
  const { network, draws, drawn, ratios } = made;
  const count = network.phases.length;
  const days = (times: Float64Array) => times.map((time) => dayAt(inputs.asOf, time));
  const finishDays = days(drawn.finish);
  return {
    kind: 'forecast',
    asOf: inputs.asOf,
    finish: rangeOf(finishDays),
    left: rangeOf(meansOf({ values: draws.minutes, width: count }).map((mean) => mean * count)),
    phases: network.phases.map(({ id }, index) => ({
      id,
      ...rangeOf(days(drawn.phaseFinish.subarray(index * draws.count, (index + 1) * draws.count))),
    })),
    drivers: driversOf(inputs.waits, made),
    histogram: histogramOf(finishDays),
    ratios,
  };
}

/** The day of a time: work done within the first day after the start is done on that day. */
function dayAt(asOf: number, time: number): number {
  // Sums of fractions of a day end a little past midnight.
  return asOf + Math.ceil(time - 1e-6);
}

/** So many draws say a correlation to within two hundredths, which is all that is shown of it. */
const MOST_RANKED = 2000;

function driversOf(
  waits: readonly ForecastWait[],
  { network, draws, drawn }: Made,
): ForecastDriver[] {
  const count = Math.min(draws.count, MOST_RANKED);
  const finish = ranksOf(drawn.finish.subarray(0, count));
  const follows = (numbers: Float64Array, start = 0, stride = 1) =>
    correlation(ranksOf(columnOf(numbers, { start, stride, count })), finish);
  const of = (by: 'phase' | 'wait', ids: readonly string[]): ForecastDriver[] => {
    const [numbers, decides] =
      by === 'phase' ? [draws.minutes, drawn.phaseDecides] : [draws.waits, drawn.waitDecides];
    return ids.map((id, start) => ({
      by,
      id,
      share: (decides[start] ?? 0) / draws.count,
      correlation: follows(numbers, start, ids.length),
    }));
  };
  const pace: ForecastDriver = {
    by: 'pace',
    id: undefined,
    share: undefined,
    correlation: follows(meansOf(draws.pace)),
  };
  const ids = (items: readonly { id: string }[]) => items.map(({ id }) => id);
  const rest = [...of('phase', ids(network.phases)), ...of('wait', ids(waits))];
  return [pace, ...rest.sort(byWeight)];
}

function byWeight(one: ForecastDriver, other: ForecastDriver): number {
  const share = (other.share ?? 0) - (one.share ?? 0);
  return share || Math.abs(other.correlation ?? 0) - Math.abs(one.correlation ?? 0);
}
