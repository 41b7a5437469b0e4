import type { Decisions } from '../../book/decisions.ts';
import { type ListKind, listKinds } from '../../model/kinds.ts';
import type { Day } from '../../time/day.ts';
import { type CellContext, columnsOf } from './columns.ts';
import { plainList } from './lists.ts';
import { withOwnId } from './own-id.ts';
import { standsUntil } from './standing.ts';
import { type BareTable, type ColumnOf, type TableName, tableOf } from './table.ts';

/** What was found, weighed up, chosen, prepared and waited for, and what each row names. */
export function decisionTables(decisions: Decisions, context: CellContext): readonly BareTable[] {
  const own = (kind: ListKind & TableName, records: readonly object[]) => {
    const schema = listKinds[kind];
    const corrected = 'corrects' in schema.shape ? [standsUntil] : [];
    const columns = [...columnsOf(schema, context), ...corrected];
    return tableOf<object>(kind, { columns, records });
  };
  const { surveys, grades, groups, findings, choices } = decisions;
  const candidates = decisions.candidates.map(withOwnId);
  const preparations = decisions.preparations.map(withOwnId);
  return [
    own('surveys', surveys),
    own('grades', grades),
    plainList(
      {
        name: 'grade_allows',
        owner: 'grades',
        records: grades,
        itemsOf: ({ allows = [] }) => allows,
      },
      { name: 'found' },
    ),
    own('groups', groups),
    plainList(
      { name: 'group_parts', owner: 'groups', records: groups, itemsOf: ({ parts }) => parts },
      { name: 'part', ref: 'parts' },
    ),
    own('findings', findings),
    plainList(
      {
        name: 'finding_readings',
        owner: 'findings',
        records: findings,
        itemsOf: ({ readings = [] }) => readings,
      },
      { name: 'reading', ref: 'readings' },
    ),
    own('candidates', candidates),
    own('choices', choices),
    plainList(
      {
        name: 'choice_candidates',
        owner: 'choices',
        records: choices,
        itemsOf: (choice) => choice.candidates,
      },
      { name: 'candidate', ref: 'candidates' },
    ),
    own('preparations', preparations),
    plainList(
      {
        name: 'preparation_parts',
        owner: 'preparations',
        records: preparations,
        itemsOf: ({ parts }) => parts,
      },
      { name: 'part', ref: 'parts' },
    ),
    waitsTable(decisions, context),
  ];
}

/** `until` of a wait is the day it ended; that of its row is the day it was replaced, and goes by its own name. */
function waitsTable({ waits }: Decisions, context: CellContext): BareTable {
  const ended: ColumnOf<{ readonly ended: Day | undefined }> = {
    name: 'until',
    type: 'date',
    cell: (wait) => wait.ended,
  };
  const columns = [...columnsOf(listKinds.waits, context, ['until']), ended, standsUntil];
  return tableOf('waits', { columns, records: waits.map(withOwnId) });
}
