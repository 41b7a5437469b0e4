import type { KnownIds } from '../check/known-ids.ts';
import { factsOf, refOf } from '../model/facts.ts';
import type { ListKind } from '../model/kinds.ts';
import { nearest } from '../read/nearest.ts';
import type { Fields } from './csv-append.ts';
import { fieldNames, requiredFields, shapeOf } from './kind-fields.ts';
import { isFreeText, knownValues, takes } from './known-values.ts';

/** Words without a field's name, placed; `left` are those that no field takes. */
export interface Placed {
  readonly fields: Fields;
  readonly left: readonly string[];
}

/**
 * Gives each word to the first field that it can only be meant for: `2:30` to a length of work, `kg` to a unit, an id to the field
 * that names ids of its kind; what fits none of these is the row's text. A word that is nearly an id is given to the field of that id,
 * so that a slip is refused and not kept as text.
 */
export function placeWords(
  kind: ListKind,
  words: readonly string[],
  given: Fields,
  known: KnownIds,
): Placed {
  const whole = withCurrencies(kind, words, known);
  const placed = placeWhole(kind, whole, given, known);
  // A number that is written wrongly is refused as one, and an id of no row as one, and neither is kept as text.
  const lacking = (name: string) => !placed.fields[name];
  const texts = [...placed.left, ...['what', 'note', 'because'].map((name) => placed.fields[name])];
  for (const [fields, looks] of [
    [numberFields(kind), /^[-+]?[.,]?\d\S*$/],
    [rowFields(kind), /^[a-z]+-\d+$/],
  ] as const) {
    const field = fields.find(lacking);
    const at = whole.findIndex((word) => looks.test(word) && texts.includes(word));
    if (field !== undefined && at >= 0)
      return placeWords(
        kind,
        whole.toSpliced(at, 1),
        { ...given, [field]: whole[at] as string },
        known,
      );
  }
  return placed;
}

/** Fields that a row needs and that name another row. */
function rowFields(kind: ListKind): string[] {
  const shape = shapeOf(kind);
  return requiredFields(kind).filter((name) => refOf(shape[name] as never) === 'rows');
}

/** Fields that a row needs and that hold a number, as money, a length of work or values do. */
function numberFields(kind: ListKind): string[] {
  const shape = shapeOf(kind);
  return requiredFields(kind).filter((name) => {
    const facts = factsOf(shape[name] as never);
    return NUMBERS.has((facts.item ? factsOf(facts.item) : facts).reads ?? '');
  });
}

const NUMBERS: ReadonlySet<string> = new Set(['amount', 'hours', 'number', 'value']);

/** An amount and the currency after it are one word, also where they were typed as two. */
function withCurrencies(kind: ListKind, words: readonly string[], known: KnownIds): string[] {
  const amounts = numberFields(kind).filter(
    (name) => factsOf(shapeOf(kind)[name] as never).reads === 'amount',
  );
  const whole: string[] = [];
  for (const word of words) {
    const pair = `${whole.at(-1)} ${word}`;
    const isAmount =
      /^[A-Z]{3}$/.test(word) && amounts.some((name) => takes(kind, name, pair, known));
    if (isAmount) whole.splice(-1, 1, pair);
    else whole.push(word);
  }
  return whole;
}

function placeWhole(
  kind: ListKind,
  words: readonly string[],
  given: Fields,
  known: KnownIds,
): Placed {
  const fields: Record<string, string> = { ...given };
  const left: string[] = [];
  const { isList } = fieldNames(kind);
  const open = (name: string) => given[name] === undefined && (!fields[name] || isList(name));
  for (const word of words) {
    const places = placesFor(kind, known).filter(open);
    const fits = places.find((field) => takes(kind, field, word, known));
    const isText = fits === undefined || isFreeText(kind, fits);
    const isSlip = (field: string) =>
      /^[a-z][a-z0-9-]{3,}$/.test(word) &&
      nearest(word, knownValues(kind, field, known)) !== undefined;
    const name = (isText ? places.find(isSlip) : undefined) ?? fits;
    if (name === undefined) left.push(word);
    else fields[name] = fields[name] ? `${fields[name]} ${word}` : word;
  }
  return { fields, left };
}

/** Fields in the order in which a word is tried: what a row needs, then what it may name, then its own words. */
function placesFor(kind: ListKind, known: KnownIds): string[] {
  const shape = shapeOf(kind);
  const required = requiredFields(kind).filter((name) => name !== 'id');
  const names = Object.entries(shape).flatMap(([name, schema]) => {
    const ref = refOf(schema);
    const isNamed =
      ref !== undefined && known.has(ref) && ref !== kind && !name.startsWith('split');
    return isNamed && !required.includes(name) ? [name] : [];
  });
  const typed = required.filter(
    (name) => !isFreeText(kind, name) && (refOf(shape[name] as never) || !isPlainId(kind, name)),
  );
  const texts = [...required.filter((name) => isFreeText(kind, name)), 'note'];
  return [...typed, ...names, ...texts.filter((name) => shape[name] !== undefined)];
}

/** An id that names nothing yet could be any word. */
function isPlainId(kind: ListKind, name: string): boolean {
  const schema = shapeOf(kind)[name];
  return schema !== undefined && factsOf(schema).reads === 'id';
}
