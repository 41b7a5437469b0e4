import { showMoney, toMinor, type WrittenAmount } from './money.ts';

/** An amount as it was written, in its own currency or else the project's. */
export function showWritten(
  amount: WrittenAmount,
  { currency, language }: { readonly currency: string; readonly language: string },
): string {
  const money = toMinor(amount.decimal, amount.currency ?? currency);
  return money ? showMoney(money, language) : amount.decimal;
}
