import type { ImportRule } from '../model/imports.ts';

/** What of a line the rules look at. */
export interface Looked {
  readonly cells: Readonly<Record<string, string>>;
  /** Which way money went, as far as the line says. */
  readonly money?: 'in' | 'out' | undefined;
}

/** The first rule that fits, and its number from 1. */
export function ruleFor(
  rules: readonly ImportRule[],
  looked: Looked,
): { readonly rule: ImportRule; readonly number: number } | undefined {
  const index = rules.findIndex((rule) => fits(rule, looked));
  const rule = rules[index];
  return rule && { rule, number: index + 1 };
}

function fits({ has, column, money }: ImportRule, looked: Looked): boolean {
  if (money !== undefined && money !== looked.money) return false;
  if (has === undefined) return true;
  const cells = column === undefined ? Object.values(looked.cells) : [looked.cells[column] ?? ''];
  const text = folded(cells.join('\n'));
  return has.some((words) => text.includes(folded(words)));
}

/** Without capitals, and with one space where there may be several or a line break. */
function folded(text: string): string {
  return text.toLowerCase().replace(/\s+/g, ' ');
}
