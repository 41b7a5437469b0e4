import { once } from '../book/once.ts';
import { type Standing, standsOn } from '../ledger/standing.ts';
import type { Reading } from '../model/kinds.ts';
import type { Day } from '../time/day.ts';
import { type MeasuredProject, type MeasureInput, measureAll } from './measure-all.ts';
import type { ValuesBySpec } from './worked.ts';

/** The measured side of a project, and its values as they were known on earlier days. */
export interface KnownValues extends MeasuredProject {
  on(day: Day): ValuesBySpec;
}

/**
 * Works out all values from the readings that stand, and on demand from those that stood before a correction. Between two
 * corrections nothing changes, so there is one set of values for each stretch.
 */
export function knownValues(
  input: Omit<MeasureInput, 'readings'> & { readonly readings: readonly (Reading & Standing)[] },
): KnownValues {
  const { readings } = input;
  const turns = [...new Set(readings.flatMap(({ since, until }) => [since, until]))]
    .filter((day) => day !== undefined)
    .sort();
  // What was known during a stretch is what stands on its first day, whatever the readings are dated.
  const knownFrom = (start: Day | undefined) =>
    readings.filter(({ since, until }) =>
      start === undefined ? since === undefined : standsOn({ since, until }, start),
    );
  const now = measureAll({ ...input, readings: knownFrom(turns.at(-1)) });
  const earlier = turns.map((_, index) =>
    once(() => measureAll({ ...input, readings: knownFrom(turns[index - 1]) }).values),
  );
  return {
    ...now,
    readings: turns.length === 0 ? now.readings : measureAll({ ...input, readings }).readings,
    on(day) {
      const next = turns.findIndex((turn) => turn > day);
      return next < 0 ? now.values : (earlier[next]?.() ?? now.values);
    },
  };
}
