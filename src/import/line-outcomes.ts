import type { ImportMapping } from '../model/kinds.ts';
import type { Imported } from './imported-list.ts';
import { keyMaker } from './key.ts';
import { fieldsOfLine } from './line-fields.ts';
import type { Outcome } from './outcome.ts';
import { ruleFor } from './rules.ts';
import type { DataLine } from './table.ts';

/** What was imported before, and which rows of it are still there. */
export interface Before {
  readonly imported: Imported;
  readonly rowIds: ReadonlySet<string>;
}

/** Kinds of cost rows that bring money in. */
const COMES_IN = ['sale', 'scrap', 'refund', 'deposit-back'];

/** What becomes of each line of a table, by its mapping and by what was imported before. */
export function lineOutcomes(
  lines: readonly DataLine[],
  mapping: ImportMapping,
  before: Before,
): Outcome[] {
  const keyOf = keyMaker(mapping.id);
  const ownKeys = new Map<string, number>();
  return lines.map((line): Outcome => {
    const told = { line: line.line, text: line.text };
    const refuse = (why: string): Outcome => ({ ...told, is: 'refused', why });
    if (line.cells === undefined)
      return refuse(line.broken ?? 'the line can not be cut into cells');

    const read = fieldsOfLine(line.cells, mapping);
    const fit = ruleFor(mapping.rules, { cells: own(line.cells, line.unread), money: read.money });
    if (fit?.rule.skip !== undefined)
      return { ...told, is: 'skipped', why: `${fit.rule.skip} (rule ${fit.number})` };
    if (line.broken !== undefined) return refuse(line.broken);
    if (read.wrong.length > 0) return refuse(read.wrong.join('; '));

    const key = keyOf(read.identity);
    const [sort, id = ''] = read.identity;
    const first = sort === 'key' ? ownKeys.get(id) : undefined;
    if (first !== undefined)
      return refuse(`its key "${id}" stands on line ${first} already; a key must be of one line`);
    if (sort === 'key') ownKeys.set(id, line.line);
    const known = before.imported.get(key);
    if (known) return { ...told, is: 'known', id: known.id, gone: !before.rowIds.has(known.id) };

    const fields = { ...mapping.fixed, ...read.fields, ...fit?.rule.set };
    const why = mapping.kind === 'costs' ? wrongWay(fields.kind, read.money) : undefined;
    if (why) return refuse(why);
    return { ...told, is: 'added', row: { kind: mapping.kind, fields }, key };
  });
}

/** Cells of the file itself: refused lines have a reason before them, which no rule may take for words of the bank. */
function own(
  cells: Readonly<Record<string, string>>,
  unread: readonly string[] = [],
): Readonly<Record<string, string>> {
  const isReason = (name: string, text: string) => name === 'reason' && /^line \d+: /.test(text);
  return Object.fromEntries(
    Object.entries(cells).filter(([name, text]) => !unread.includes(name) && !isReason(name, text)),
  );
}

function wrongWay(kind = 'payment', money: 'in' | 'out' | undefined): string | undefined {
  const comesIn = COMES_IN.includes(kind);
  if (money === 'in' && !comesIn)
    return `money came in; a rule must skip it or set kind to one of: ${COMES_IN.join(', ')}`;
  return money === 'out' && comesIn ? `money went out, and kind is ${kind}` : undefined;
}
