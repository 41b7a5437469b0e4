import type { Day } from '../time/day.ts';

/**
 * The PDF with the day of the ledger for the moment of printing, so that the same ledger prints the same bytes. A date of a PDF
 * (ISO 32000-1, 7.9.4) has the same length whatever it says, so nothing moves.
 */
export function datedPdf(pdf: Uint8Array, day: Day): Buffer {
  const text = Buffer.from(pdf).toString('latin1');
  const date = `D:${day.replaceAll('-', '')}000000+00'00'`;
  return Buffer.from(
    text.replace(/(\/(?:CreationDate|ModDate) \()D:\d{14}[+-]\d\d'\d\d'/g, `$1${date}`),
    'latin1',
  );
}
