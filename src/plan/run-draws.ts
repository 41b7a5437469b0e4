import type { Draws } from './forecast-draws.ts';
import type { OpenNetwork } from './open-network.ts';
import { type WorkClock, workClock } from './work-clock.ts';

/** What came of the draws. Times are days after the start; those at the horizon are not done within it. */
export interface DrawnFinishes {
  readonly horizon: number;
  readonly finish: Float64Array;
  /** By phase, then by draw. */
  readonly phaseFinish: Float64Array;
  /** In how many draws a phase, or a wait, was part of what decided the finish. */
  readonly phaseDecides: Uint32Array;
  readonly waitDecides: Uint32Array;
}

const START = -1;
/** A wait w as a driver is kept as −2 − w, a phase as its number. */
const asDriver = (wait: number) => -2 - wait;

/**
 * Works off the open phases in every draw. There is one builder, so phases that could go on side by side share the hours: all
 * work is put in one row, in the order in which the network alone (with the whole pace for each) would let phases begin, and
 * none begins before that time. So a phase that waits lets the others pass, and the finish is
 *
 *     the latest over all phases k of: earliest start of k + work of all phases that can't start earlier than k
 *
 * For one worker and links without lag no order finishes sooner (earliest release date first, Jackson 1955). With lags it is
 * what a builder reaches who always first does what the longest wait hangs on. Each part of the formula only grows with each
 * wait, link and minute, so taking one away never delays the finish.
 */
export function runDraws(
  network: OpenNetwork,
  draws: Draws,
  dayShares: Float64Array,
): DrawnFinishes {
  const count = network.phases.length;
  const run: Run = {
    network,
    draws,
    clock: workClock(draws.pace, dayShares),
    waitCount: draws.waits.length / draws.count,
    heads: new Float64Array(count),
    ends: new Float64Array(count),
    drivers: new Int32Array(count),
    sequence: Int32Array.from({ length: count }, (_, index) => index),
    finish: new Float64Array(draws.count),
    phaseFinish: new Float64Array(count * draws.count),
    phaseDecides: new Uint32Array(count),
    waitDecides: new Uint32Array(draws.waits.length / draws.count),
  };
  for (let draw = 0; draw < draws.count; draw++) {
    run.clock.begin(draw);
    findHeads(run, draw);
    sortByHead(run);
    countDeciding(run, draw, workOff(run, draw));
  }
  const { finish, phaseFinish, phaseDecides, waitDecides, clock } = run;
  return { horizon: clock.horizon, finish, phaseFinish, phaseDecides, waitDecides };
}

/** All that a draw uses, made once. */
interface Run extends Omit<DrawnFinishes, 'horizon'> {
  readonly network: OpenNetwork;
  readonly draws: Draws;
  readonly clock: WorkClock;
  readonly waitCount: number;
  /** Earliest start and finish of each phase if it had the whole pace, and what decides that start. */
  readonly heads: Float64Array;
  readonly ends: Float64Array;
  readonly drivers: Int32Array;
  /** Phases by earliest start; it is left sorted, so the next draw has little to move. */
  readonly sequence: Int32Array;
}

function findHeads(run: Run, draw: number): void {
  const { network, draws, clock, waitCount, heads, ends, drivers } = run;
  const { linksFrom, linkTo, lags, waitsFrom, waitTo, notBefore } = network;
  const count = heads.length;
  for (let i = 0; i < count; i++) {
    let head = notBefore[i] as number;
    let driver = START;
    for (let k = linksFrom[i] as number; k < (linksFrom[i + 1] as number); k++) {
      const before = linkTo[k] as number;
      const at = (ends[before] as number) + (lags[k] as number);
      if (at <= head) continue;
      head = at;
      driver = before;
    }
    for (let k = waitsFrom[i] as number; k < (waitsFrom[i + 1] as number); k++) {
      const wait = waitTo[k] as number;
      const at = draws.waits[draw * waitCount + wait] as number;
      if (at <= head) continue;
      head = at;
      driver = asDriver(wait);
    }
    heads[i] = head;
    drivers[i] = driver;
    ends[i] = clock.advance(head, draws.minutes[draw * count + i] as number);
  }
}

/** By insertion, which is quick on a list that is nearly sorted; equal starts stay in the order of the network. */
function sortByHead({ heads, sequence }: Run): void {
  for (let i = 1; i < sequence.length; i++) {
    const phase = sequence[i] as number;
    const head = heads[phase] as number;
    let at = i;
    for (; at > 0; at--) {
      const other = sequence[at - 1] as number;
      const otherHead = heads[other] as number;
      if (otherHead < head || (otherHead === head && other < phase)) break;
      sequence[at] = other;
    }
    sequence[at] = phase;
  }
}

/** Puts all work in one row and returns the last place in it before which nobody worked; −1 when there is none. */
function workOff(run: Run, draw: number): number {
  const { draws, clock, heads, sequence, finish, phaseFinish } = run;
  const count = sequence.length;
  let end = 0;
  let lastGap = -1;
  for (let place = 0; place < count; place++) {
    const phase = sequence[place] as number;
    const head = heads[phase] as number;
    if (head > end) {
      lastGap = place;
      end = head;
    }
    end = clock.advance(end, draws.minutes[draw * count + phase] as number);
    phaseFinish[phase * draws.count + draw] = end;
  }
  finish[draw] = end;
  return lastGap;
}

/** All work since the last gap decides the finish, and what led to the first start after the gap. */
function countDeciding(run: Run, draw: number, lastGap: number): void {
  const { draws, sequence, drivers, phaseDecides, waitDecides } = run;
  const count = sequence.length;
  for (let place = Math.max(0, lastGap); place < count; place++) decide(sequence[place] as number);

  let driver = lastGap < 0 ? START : (drivers[sequence[lastGap] as number] as number);
  for (; driver >= 0; driver = drivers[driver] as number) decide(driver);
  if (driver < START) {
    const wait = asDriver(driver);
    waitDecides[wait] = (waitDecides[wait] as number) + 1;
  }

  function decide(phase: number): void {
    if ((draws.minutes[draw * count + phase] as number) > 0)
      phaseDecides[phase] = (phaseDecides[phase] as number) + 1;
  }
}
