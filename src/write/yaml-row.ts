import type { Fields } from './csv-append.ts';
import type { FieldHabit } from './yaml-habits.ts';
import { looksLikeNumber, type Setting, writeScalar } from './yaml-scalar.ts';

/** How a list lays out its rows. */
export interface Layout {
  readonly lineEnd: string;
  /** What stands before the dash of a row. */
  readonly indent: string;
  /** What stands between dash and row. */
  readonly gap: string;
  /** Whether braces keep a space inside. */
  readonly padded: boolean;
  readonly isList: (name: string) => boolean;
  readonly habit: (name: string) => FieldHabit;
  readonly order: (row: Fields) => readonly string[];
}

/** A row with a dash: one line a field, or all in braces. */
export function blockRow(row: Fields, layout: Layout, inBraces: boolean): string {
  const { indent, gap, lineEnd } = layout;
  if (inBraces) return `${indent}-${gap}${flowRow(row, layout)}${lineEnd}`;
  const inner = `${indent} ${gap}`;
  const lines = groups(row, layout).map(([name, value]) => field(name, value, inner, layout));
  return `${indent}-${gap}${lines.join(lineEnd + inner)}${lineEnd}`;
}

/** A row in braces. */
export function flowRow(row: Fields, layout: Layout): string {
  const pad = layout.padded ? ' ' : '';
  const parts = groups(row, layout).map(([name, value]) =>
    typeof value === 'string'
      ? `${name}: ${flowValue(name, value, layout, 'flow')}`
      : `${name}: ${inner(value, layout)}`,
  );
  return `{${pad}${parts.join(', ')}${pad}}`;
}

function field(name: string, value: string | Fields, indent: string, layout: Layout): string {
  if (typeof value !== 'string') return `${name}: ${inner(value, layout)}`;
  const habit = layout.habit(name);
  if (!layout.isList(name) || habit.list !== 'block')
    return `${name}: ${flowValue(name, value, layout, 'block')}`;
  const dash = `${layout.lineEnd}${indent}${' '.repeat(habit.indent ?? 2)}- `;
  const items = value.split(/\s+/).map((item) => dash + scalar(item, habit, 'block', true));
  return `${name}:${items.join('')}`;
}

function flowValue(name: string, value: string, layout: Layout, setting: Setting): string {
  const habit = layout.habit(name);
  if (!layout.isList(name) || habit.list === 'text') return scalar(value, habit, setting, false);
  const pad = habit.padded ? ' ' : '';
  const items = value.split(/\s+/).map((item) => scalar(item, habit, 'flow', true));
  return `[${pad}${items.join(', ')}${pad}]`;
}

function scalar(text: string, habit: FieldHabit, setting: Setting, inList: boolean): string {
  const usual = looksLikeNumber(text) && !inList ? 'double' : 'plain';
  return writeScalar(text, habit.scalar ?? usual, setting);
}

function inner(fields: Fields, layout: Layout): string {
  return flowRow(fields, { ...layout, habit: () => ({}), order: Object.keys });
}

/** Fields in their order; `machine.maker` and its like are one group, as they are in a table. */
function groups(row: Fields, layout: Layout): [string, string | Fields][] {
  const result = new Map<string, string | Record<string, string>>();
  for (const name of layout.order(row)) {
    const value = row[name] ?? '';
    if (value === '') continue;
    const [outer = '', ...rest] = name.split('.');
    if (rest.length === 0) result.set(name, value);
    else {
      const held = result.get(outer);
      const group = typeof held === 'object' ? held : {};
      group[rest.join('.')] = value;
      result.set(outer, group);
    }
  }
  return [...result];
}
