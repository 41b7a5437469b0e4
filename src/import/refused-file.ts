import { writeNew } from '../write/place-file.ts';
import { type Encoding, textBytes } from './charset.ts';
import type { Outcome } from './outcome.ts';
import type { Table } from './table.ts';

type Refused = Extract<Outcome, { is: 'refused' }>;

/**
 * Refused lines as a table that the same mapping reads: what stood above the header, the header, and each line with its own bytes,
 * with the reason before it, since a line with an open quote would swallow what comes behind.
 */
export function refusedTable(
  table: Table,
  refused: readonly Refused[],
  encoding: Encoding,
  bom: boolean,
): Uint8Array {
  const separator = String.fromCharCode(table.separator);
  const before = (text: string) => textBytes(`${text}${separator}`, encoding);
  const bytesAt = new Map(table.data.map(({ line, bytes }) => [line, bytes]));
  return Buffer.concat([
    ...(bom ? [Uint8Array.of(0xef, 0xbb, 0xbf)] : []),
    ...table.above.map(({ bytes }) => bytes),
    before('reason'),
    table.header.bytes,
    ...refused.flatMap(({ line, why }) => [
      before(quoted(`line ${line}: ${why}`)),
      bytesAt.get(line) ?? new Uint8Array(),
    ]),
  ]);
}

/** Writes beside the input under the first name that is free: `FILE.refused.csv`, `FILE.refused-2.csv` … */
export async function writeRefused(
  input: string,
  bytes: Uint8Array,
  ending = 'csv',
): Promise<string> {
  for (let number = 1; ; number++) {
    const path = `${input}.refused${number === 1 ? '' : `-${number}`}.${ending}`;
    if (await writeNew(path, bytes)) return path;
  }
}

function quoted(text: string): string {
  return `"${text.replaceAll('"', '""').replace(/\s+/g, ' ')}"`;
}
