import { isMap, isScalar, isSeq, type Scalar, type YAMLMap, type YAMLSeq } from 'yaml';
import { isPlain, type ScalarStyle, type Setting } from './yaml-scalar.ts';

/** How a list's own rows write a field. */
export interface FieldHabit {
  /** Quotes that the list puts where none are needed; nothing where no row tells. */
  readonly scalar?: ScalarStyle;
  /** How several values stand: in brackets, in lines of their own, or as one text with spaces. */
  readonly list?: 'flow' | 'block' | 'text';
  /** Columns from the key to the dashes of its list. */
  readonly indent?: number;
  /** Whether brackets keep a space inside. */
  readonly padded?: boolean;
}

/** Looks the newest rows over for how they write a field. */
export function habitOf(rows: readonly YAMLMap[], name: string, source: string): FieldHabit {
  let habit: FieldHabit = {};
  for (const row of rows.toReversed()) {
    const pair = row.items.find(({ key }) => isScalar(key) && key.value === name);
    if (pair === undefined) continue;
    const column = columnOf((pair.key as Scalar).range?.[0] ?? 0, source);
    const setting = row.flow ? 'flow' : 'block';
    habit = { ...told(pair.value, setting, column, source), ...habit };
    if (habit.scalar !== undefined) break;
  }
  return habit;
}

function told(value: unknown, setting: Setting, column: number, source: string): FieldHabit {
  if (isSeq(value)) return listHabit(value, setting, column, source);
  const scalar = isScalar(value) ? quotesOf(value, setting) : undefined;
  return scalar === undefined ? { list: 'text' } : { list: 'text', scalar };
}

function listHabit(list: YAMLSeq, setting: Setting, column: number, source: string): FieldHabit {
  const start = list.range?.[0] ?? 0;
  const scalar = list.items
    .filter((item) => isScalar(item))
    .map((item) => quotesOf(item, list.flow ? 'flow' : setting))
    .find((style) => style !== undefined);
  const quotes = scalar === undefined ? {} : { scalar };
  return list.flow
    ? { list: 'flow', padded: source[start + 1] === ' ', ...quotes }
    : { list: 'block', indent: Math.max(0, columnOf(start, source) - column), ...quotes };
}

/** Quotes say something only where they could have been left out. */
function quotesOf(scalar: Scalar, setting: Setting): ScalarStyle | undefined {
  const text = typeof scalar.value === 'string' ? scalar.value : (scalar.source ?? '');
  if (!isPlain(text, setting)) return undefined;
  if (scalar.type === 'QUOTE_DOUBLE') return 'double';
  if (scalar.type === 'QUOTE_SINGLE') return 'single';
  return scalar.type === 'PLAIN' ? 'plain' : undefined;
}

/** Columns from the start of its line to an offset. */
export function columnOf(offset: number, source: string): number {
  return offset - (source.lastIndexOf('\n', offset - 1) + 1);
}

/** The rows of a list that are groups of fields. */
export function mapsOf(list: YAMLSeq | undefined): YAMLMap[] {
  return (list?.items ?? []).filter((item) => isMap(item)) as YAMLMap[];
}
