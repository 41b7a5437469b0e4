import type { Recipe } from '../../measure/recipe.ts';
import { specSchema } from '../../model/definitions.ts';
import type { Spec } from '../../model/kinds.ts';
import { type CellContext, columnsOf } from './columns.ts';
import { listTable } from './lists.ts';
import { type BareTable, type ColumnOf, tableOf } from './table.ts';

/** The specs, and what each that is worked out is worked out of. */
export function specTables(
  specs: readonly Spec[],
  recipes: ReadonlyMap<string, Recipe>,
  context: CellContext,
): readonly BareTable[] {
  const itemsOf = ({ id }: { readonly id: string }) => recipes.get(id)?.inputs ?? [];
  return [
    tableOf('specs', {
      columns: [...columnsOf(specSchema, context, ['inputs', 'formula']), formula],
      records: specs,
    }),
    listTable({
      name: 'spec_inputs',
      owner: 'specs',
      records: specs,
      itemsOf,
      columns: inputColumns,
    }),
  ];
}

const formula: ColumnOf<Spec> = {
  name: 'formula',
  type: 'string',
  cell: (spec) => spec.formula && safe(spec.formula),
};

const inputColumns: readonly ColumnOf<Recipe['inputs'][number]>[] = [
  {
    name: 'name',
    type: 'string',
    required: true,
    cell: ({ name }) => name,
  },
  {
    name: 'given_by',
    type: 'string',
    ref: 'specs',
    cell: (input) => (input.from === 'spec' ? input.spec : undefined),
  },
  {
    name: 'given',
    type: 'string',
    cell: (input) => (input.from === 'constant' ? safe(input.text) : undefined),
  },
  {
    name: 'carried',
    type: 'boolean',
    required: true,
    cell: (input) => input.from === 'spec' && input.carried,
  },
];

/** Arithmetic may start with a sign, which a spreadsheet would take for a formula of its own; brackets change nothing in it. */
function safe(arithmetic: string): string {
  return /^[=+\-@]/.test(arithmetic) ? `(${arithmetic})` : arithmetic;
}
