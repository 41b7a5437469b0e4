import { decimalsOf } from './quantity.ts';

/** A decimal with the digits it was written with and the decimal mark of the language, without grouping. */
export function showWrittenDecimal(written: string, language: string): string {
  const places = decimalsOf(written);
  return new Intl.NumberFormat(language, {
    minimumFractionDigits: places,
    maximumFractionDigits: places,
    useGrouping: false,
  }).format(Number(written));
}
