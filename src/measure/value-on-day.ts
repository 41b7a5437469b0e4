import type { Day } from '../time/day.ts';
import type { Spread, Uncertain } from './uncertain.ts';

/** The state a spec was in when it was read: a reading's own word for it. */
export type SpecState = 'as-found' | 'before' | 'after' | 'final';

/** The ends of a 95 % interval, in the value's unit. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** What a read value and a worked-out one have in common. */
export interface ValueOnDay extends Uncertain, Spread {
  /** Read from an instrument, or worked out of other values. */
  readonly kind: 'read' | 'worked';
  /** The row's id for a reading; its own for a value that was worked out. It is the anchor on the spec's page. */
  readonly id: string;
  readonly date: Day;
  readonly state: SpecState;
  readonly unit: string;
  /** Decimals for showing a value whose U is not known. */
  readonly decimals: number;
  /** Shown in the place of ± U where drawing distributions gave another interval than the formula of the GUM. */
  readonly interval?: Interval | undefined;
}

/** The 95 % interval of a value: the drawn one where there is one, else value ± U; undefined where nothing is known. */
export function intervalOf({
  value,
  U,
  interval,
}: Pick<ValueOnDay, 'value' | 'U' | 'interval'>): Interval | undefined {
  if (interval !== undefined) return interval;
  return U === undefined ? undefined : { low: value - U, high: value + U };
}
