/** A quotient as the nearest whole number, halves away from zero; the divisor is above zero. */
export function divideHalfAwayFromZero(dividend: bigint, divisor: bigint): bigint {
  const size = dividend < 0n ? -dividend : dividend;
  const rounded = (2n * size + divisor) / (2n * divisor);
  return dividend < 0n ? -rounded : rounded;
}
