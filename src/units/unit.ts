import { kindNames, type QuantityKind, quantityKinds, type Unit } from './kinds.ts';

interface Known {
  readonly unit: Unit;
  readonly kind: QuantityKind;
}

const bySymbol = new Map<string, Known>();
const byAlias = new Map<string, Unit[]>();
for (const kind of kindNames) {
  for (const unit of quantityKinds[kind] as readonly Unit[]) {
    bySymbol.set(unit.symbol, { unit, kind });
    for (const alias of unit.alias ?? []) byAlias.set(alias, [...(byAlias.get(alias) ?? []), unit]);
  }
}

/** Whether the text is the symbol of a unit. Symbols are exact: `KG` is none. */
export function isUnit(symbol: string): boolean {
  return bySymbol.has(symbol);
}

/** The quantity kind a unit belongs to; undefined for an unknown symbol. */
export function kindOf(symbol: string): QuantityKind | undefined {
  return bySymbol.get(symbol)?.kind;
}

/** Symbols of all units of a kind, the most usual first. */
export function unitsOf(kind: QuantityKind): readonly string[] {
  return quantityKinds[kind].map((unit) => unit.symbol);
}

/** Symbols of all units. */
export function unitSymbols(): readonly string[] {
  return [...bySymbol.keys()];
}

/** The symbol meant by a common misspelling (`Nm`, `um`, `KG`), or undefined. */
export function guessUnit(text: string, kind?: QuantityKind): string | undefined {
  const named = (byAlias.get(text) ?? []).find(
    (unit) => kind === undefined || kindOf(unit.symbol) === kind,
  );
  if (named) return named.symbol;

  const folded = text.toLowerCase();
  const symbols = kind === undefined ? [...bySymbol.keys()] : unitsOf(kind);
  return symbols.find((symbol) => symbol.toLowerCase() === folded);
}

/** Spellings that some people use for another unit than the one they are known for here. */
const TWO_MEANINGS = new Set(['min', "'", 'mil', 'dB', 'C', 'F', 'ft-lb', 'in-lb', 'ftlb']);

/** The one symbol that a misspelling can mean, or undefined where another can be meant too. */
export function soleUnit(text: string): string | undefined {
  if (TWO_MEANINGS.has(text)) return undefined;
  const named = byAlias.get(text) ?? [];
  const folded = [...bySymbol.keys()].filter(
    (symbol) => symbol.toLowerCase() === text.toLowerCase(),
  );
  const meant = new Set([...named.map(({ symbol }) => symbol), ...folded]);
  return meant.size === 1 ? [...meant][0] : undefined;
}

/** The UCUM code of a unit, for data outputs. */
export function ucumOf(symbol: string): string | undefined {
  return known(symbol).unit.ucum;
}

/** The unit of the other system that stands beside this one, if it has one. Volumes and consumption follow the project's choice. */
export function unitBeside(symbol: string, other: 'imperial' | 'us'): string | undefined {
  const beside = known(symbol).unit.beside;
  return other === 'us' ? beside?.replace('(UK)', '(US)') : beside;
}

/**
 * A value in another unit of the same kind, in double precision (relative error of a few 1e-16).
 * @throws when either unit is unknown or the kinds differ: a torque is not an energy.
 */
export function convertUnit(value: number, from: string, to: string): number {
  const source = known(from);
  const target = known(to);
  if (source.kind !== target.kind)
    throw new Error(`cannot convert ${from} (${source.kind}) to ${to} (${target.kind})`);
  return from === to ? value : fromBaseUnit(toBaseUnit(value, from), to);
}

/** A value in the coherent base unit of its quantity kind, as formulas take it. */
export function toBaseUnit(value: number, symbol: string): number {
  const { unit } = known(symbol);
  return unit.reciprocal ? unit.reciprocal / value : value * unit.toBase + (unit.offset ?? 0);
}

/** A value in base units, in a unit. */
export function fromBaseUnit(base: number, symbol: string): number {
  const { unit } = known(symbol);
  return unit.reciprocal ? unit.reciprocal / base : (base - (unit.offset ?? 0)) / unit.toBase;
}

/** How many base units a small step of one unit is worth at a value; offsets play no part. */
export function baseSlope(symbol: string, at: number): number {
  const { unit } = known(symbol);
  return unit.reciprocal ? -unit.reciprocal / at ** 2 : unit.toBase;
}

/**
 * Size of a small difference in another unit of the same kind: offsets play no part (1 °C is 1.8 °F wide).
 * `at` is the value it stands at, in the unit it is turned into; it counts where one unit is the reciprocal of the other.
 */
export function convertInterval(size: number, at: number, from: string, to: string): number {
  if (known(from).unit.reciprocal || known(to).unit.reciprocal) {
    return (size * at) / convertUnit(at, to, from);
  }
  return (size * known(from).unit.toBase) / known(to).unit.toBase;
}

/** Whether more in one unit is less in the other, as miles to the gallon against litres to 100 km. */
export function isTurned(from: string, to: string): boolean {
  return baseSlope(from, 1) * baseSlope(to, 1) < 0;
}

/** A unit by its symbol. @throws when there is none, which a check has found before. */
export function known(symbol: string): Known {
  const found = bySymbol.get(symbol);
  if (!found) throw new Error(`unknown unit ${symbol}`);
  return found;
}
