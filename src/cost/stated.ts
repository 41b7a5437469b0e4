import { type Money, toMinor, type WrittenAmount } from '../money/money.ts';

/** An amount stated of a part, in the project's currency; none in another one, which the check has said already. */
export function stated(amount: WrittenAmount | undefined, currency: string): Money | undefined {
  if (amount === undefined || (amount.currency ?? currency) !== currency) return undefined;
  return toMinor(amount.decimal, currency);
}
