import type { Money } from './money.ts';

/**
 * Shares an amount by weights, whole minor units each, by the method of the largest remainder: every share is its exact part cut
 * to whole units, and the units left over go to the largest parts cut off, ties to the first. Nothing is lost or made.
 * A negative amount is shared by its size, then given its sign.
 *
 * @throws when there is no weight above zero or one below it: there would be nobody to give it to.
 * @example allocate({ minor: 100, currency: 'GBP' }, [1n, 1n, 1n]) // 34, 33, 33
 */
export function allocate(amount: Money, weights: readonly bigint[]): readonly Money[] {
  const whole = weights.reduce((total, weight) => total + weight, 0n);
  if (whole <= 0n || weights.some((weight) => weight < 0n))
    throw new RangeError('shares need weights of zero or more, and one above it; this is our bug');

  const size = BigInt(Math.abs(amount.minor));
  const shares = weights.map((weight) => (size * weight) / whole);
  const cutOff = weights.map((weight) => (size * weight) % whole);
  const left = Number(size - shares.reduce((total, share) => total + share, 0n));
  const lucky = new Set(
    cutOff
      .map((part, index) => ({ part, index }))
      .sort((a, b) => compare(b.part, a.part) || a.index - b.index)
      .slice(0, left)
      .map(({ index }) => index),
  );
  const sign = amount.minor < 0 ? -1 : 1;
  return shares.map((share, index) => ({
    minor: plainZero(sign * (Number(share) + (lucky.has(index) ? 1 : 0))),
    currency: amount.currency,
  }));
}

/** Weights as whole numbers that are to one another as the decimal texts are: `1.5` and `2` become 15 and 20. */
export function wholeWeights(decimals: readonly string[]): readonly bigint[] {
  const longest = Math.max(0, ...decimals.map((text) => fractionOf(text).length));
  return decimals.map((text) => {
    const [whole = ''] = text.split('.');
    return BigInt(whole + fractionOf(text).padEnd(longest, '0'));
  });
}

function fractionOf(decimal: string): string {
  return decimal.split('.')[1] ?? '';
}

function compare(a: bigint, b: bigint): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}

function plainZero(number: number): number {
  return number === 0 ? 0 : number;
}
