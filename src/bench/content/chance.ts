import { randomStream } from '../../measure/random.ts';

/** Choices that fall the same way for the same seed. */
export interface Chance {
  pick<T>(list: readonly T[]): T;
  /** A whole number, both ends included. */
  whole(from: number, to: number): number;
  happens(share: number): boolean;
  /** Standard normal. */
  normal(): number;
}

export function chanceOf(seed: number): Chance {
  const { uniform, normal } = randomStream(seed);
  const whole = (from: number, to: number) => from + Math.floor(uniform() * (to - from + 1));
  return {
    pick: <T>(list: readonly T[]) => list[whole(0, list.length - 1)] as T,
    whole,
    happens: (share) => uniform() < share,
    normal,
  };
}
