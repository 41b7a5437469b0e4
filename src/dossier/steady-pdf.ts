import type { Day } from '../time/day.ts';

/**
 * The PDF without what differs from one printing to the next, so that the same ledger prints the same bytes: the day of the ledger
 * stands for the moment of printing, and the tagged cells are counted from 1 in place of the browser's own count. Headings stand
 * once in the outline. Nothing changes its length, so nothing moves.
 */
export function steadyPdf(pdf: Uint8Array, day: Day): Buffer {
  const text = Buffer.from(pdf).toString('latin1');
  return Buffer.from(headingsOnce(countedAnew(datedOn(text, day))), 'latin1');
}

/** Dates as of ISO 32000-1, 7.9.4. */
function datedOn(text: string, day: Day): string {
  const date = `D:${day.replaceAll('-', '')}000000+00'00'`;
  return text.replace(/(\/(?:CreationDate|ModDate) \()D:\d{14}[+-]\d\d'\d\d'/g, `$1${date}`);
}

/** Ids of structure elements keep their order, which the name tree that lists them goes by. */
function countedAnew(text: string): string {
  const ids = [...new Set(text.match(NODE))].sort();
  const counted = new Map(ids.map((id, index) => [id, String(index + 1).padStart(8, '0')]));
  return text.replace(NODE, (id) => `(node${counted.get(id)})`);
}

/** A heading that was moved to the next page stands twice in its line of the outline; blanks fill the room of the second. */
function headingsOnce(text: string): string {
  return text.replace(
    /\/Title (?:\((.+)\1\)|<FEFF((?:[0-9A-F]{4})+)\2>)/g,
    (twice, plain?: string, coded?: string) =>
      `/Title ${plain ? `(${plain})` : `<FEFF${coded}>`}`.padEnd(twice.length),
  );
}

const NODE = /\(node\d{8}\)/g;
