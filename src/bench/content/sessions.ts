import type { Day } from '../../time/day.ts';
import type { Chance } from './chance.ts';
import { type System, specId } from './definitions.ts';
import { dayAt } from './span.ts';
import type { MeasuredSpec } from './systems.ts';
import type { Cells } from './table-file.ts';

/** A day on which specs of one system were read, all of them or the first half. */
export interface Session {
  readonly date: Day;
  readonly system: System;
  readonly state: string;
  readonly whole: boolean;
}

/** Sessions in order of date that have so many readings together; each system is read in turn. */
export function sessionsOf(systems: readonly System[], readings: number): Session[] {
  const all = systems[0]?.plan.measured.length ?? 0;
  const wholes: boolean[] = [];
  for (let left = readings; left > 0; left -= wholes.at(-1) ? all : all / 2)
    wholes.push(wholes.length < systems.length || wholes.length % 5 < 3);
  const rounds = Math.ceil(wholes.length / systems.length);
  return wholes.map((whole, index) => ({
    date: dayAt((index + 1) / (wholes.length + 1)),
    system: systems[index % systems.length] as System,
    state: stateOf(Math.floor(index / systems.length), rounds),
    whole,
  }));
}

function stateOf(round: number, rounds: number): string {
  if (round === 0) return 'as-found';
  if (round >= rounds - 2) return 'final';
  return round % 2 === 1 ? 'before' : 'after';
}

/** The rows of the readings, as many as wanted, by their ids in order of date. */
export function readingRows(
  sessions: readonly Session[],
  readings: number,
  chance: Chance,
): Cells[] {
  const rows = sessions.flatMap((session, index) => {
    const { measured } = session.system.plan;
    const read = session.whole ? measured : measured.slice(0, measured.length / 2);
    const zero = chance.happens(0.3) ? `zero-${index}` : undefined;
    const by = chance.happens(0.2) ? 'helper' : 'builder';
    const conditions = `cold, ${chance.whole(4, 26)} °C`;
    return read.map((spec) => ({ ...reading(session, spec, chance), zero, conditions, by }));
  });
  return rows.slice(0, readings).map((row, index) => ({ id: `r-${index + 1}`, ...row }));
}

function reading({ date, system, state }: Session, spec: MeasuredSpec, chance: Chance): Cells {
  const middle = spec.value + spec.spread * chance.normal();
  const values = Array.from({ length: chance.whole(3, 5) }, () =>
    (middle + 0.4 * spec.spread * chance.normal()).toFixed(spec.decimals),
  );
  return {
    ...{ date, spec: specId(system, spec.key), state, values: values.join(' '), unit: spec.unit },
    instrument: spec.instrument,
  };
}
