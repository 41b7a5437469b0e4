import type { z } from 'zod';
import { dayReader } from '../import/read-date.ts';
import { refOf } from '../model/facts.ts';
import { helpColumns } from '../model/imports.ts';
import { listKinds } from '../model/kinds.ts';
import { suggest } from '../read/nearest.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import type { Path } from '../read/raw.ts';
import { unknownId } from './references.ts';
import type { Rule } from './rule.ts';

/** A mapping names fields that its rows have, words and ids that these may hold, and a style of days that is one. */
export const importsFit: Rule = ({ project, known }) => {
  const seen = new Set<string>();
  return project.imports.flatMap(({ value, raw }): Problem[] => {
    const shape: Readonly<Record<string, unknown>> = listKinds[value.kind].shape;
    const twice = seen.has(value.id);
    seen.add(value.id);
    const fieldNames = Object.keys(shape).filter((name) => name !== 'id');
    const unknownField = (name: string, path: Path, names: readonly string[]) =>
      names.includes(name)
        ? []
        : [
            problemAt(
              raw.keyPlaceOf(path),
              'import/field',
              `${value.kind} rows have no field "${name}"`,
              suggest(name, names) ?? `fields: ${names.join(', ')}`,
            ),
          ];
    const given = (fields: Readonly<Record<string, string>> | undefined, path: Path) =>
      Object.entries(fields ?? {}).flatMap(([name, text]) => {
        const at = [...path, name];
        const wrong = unknownField(name, at, fieldNames);
        if (wrong.length > 0) return wrong;
        const schema = shape[name] as z.ZodType;
        const place = raw.placeOf(at);
        const issue = schema.safeParse(text).error?.issues[0];
        if (issue) {
          const { message, params } = issue as { message: string; params?: { fix?: string } };
          return [problemAt(place, 'import/value', `${name}: "${text}" ${message}`, params?.fix)];
        }
        const kind = refOf(schema);
        const ids = text.split(/\s+/).map((item) => item.replace(/[:=][\s\S]*$/, ''));
        return kind === undefined ? [] : ids.flatMap((id) => unknownId(id, kind, place, known));
      });
    return [
      ...(twice
        ? [
            problemAt(
              raw.placeOf(['id']),
              'id/duplicate',
              `there are two mappings "${value.id}"`,
              'give one another id',
            ),
          ]
        : []),
      ...(dayReader(value.dates)
        ? []
        : [
            problemAt(
              raw.placeOf(['dates']),
              'import/dates',
              `dates: "${value.dates}" is no way to write a day`,
              'write it like DD.MM.YYYY, DD/MM/YY or D MMM YYYY',
            ),
          ]),
      ...Object.keys(value.columns).flatMap((name) =>
        unknownField(name, ['columns', name], [...fieldNames, ...helpColumns]),
      ),
      ...given(value.fixed, ['fixed']),
      ...value.rules.flatMap((rule, index) => {
        const at = ['rules', index];
        const does = (rule.skip === undefined) !== (rule.set === undefined);
        const asks = rule.has !== undefined || rule.money !== undefined;
        const wrong =
          does && asks
            ? []
            : [
                problemAt(
                  raw.placeOf(at),
                  'import/rule',
                  'a rule has "has" or "money", and either "skip" or "set"',
                  'like "- has: BOLTS" with "set: {category: material}"',
                ),
              ];
        return [...wrong, ...given(rule.set, [...at, 'set'])];
      }),
    ];
  });
};
