import { type Correction, firstIds, standingsOf } from '../ledger/corrections.ts';
import type { Standing } from '../ledger/standing.ts';
import { published } from '../ledger/withheld.ts';
import type {
  Candidate,
  Choice,
  Finding,
  Grade,
  PartGroup,
  Preparation,
  Survey,
  Wait,
} from '../model/kinds.ts';
import type { Lists } from '../read/lists.ts';
import type { Day } from '../time/day.ts';

/** A row that others name: `id` is that of the first in its chain of corrections, `rowId` its own. */
interface Named extends Standing {
  readonly rowId: string;
}

/** What was found, weighed up, chosen, prepared and waited for; rows in order of date, those that were replaced among them. */
export interface Decisions {
  readonly surveys: readonly Survey[];
  readonly grades: readonly Grade[];
  readonly groups: readonly PartGroup[];
  readonly findings: readonly (Finding & Standing)[];
  readonly candidates: readonly (Candidate & Named)[];
  readonly choices: readonly (Choice & Standing)[];
  readonly preparations: readonly PreparationRow[];
  readonly waits: readonly (EndedWait & Named)[];
}

/** A wait row; its `until` goes by another name, as that of a standing is the day the row was replaced. */
export interface EndedWait extends Omit<Wait, 'until'> {
  /** Day it ended. */
  readonly ended: Day | undefined;
}

/** A row of a preparation: `id` is that of the preparation's first row, `rowId` its own. */
export interface PreparationRow extends Preparation, Standing {
  readonly rowId: string;
}

/** Puts the rows about deciding and waiting into order. Candidates, preparations and waits go by the id of their first row. */
export function decisionsOf(lists: Lists, corrections: readonly Correction[]): Decisions {
  const standingOf = standingsOf(corrections);
  const firstId = firstIds(corrections);
  const own = <Row extends { readonly id: string; readonly date: Day }>(
    list: readonly { readonly value: Row }[],
  ) =>
    list
      .map(({ value }) => ({ ...value, ...standingOf(value.id) }))
      .sort((a, b) => (a.date === b.date ? 0 : a.date < b.date ? -1 : 1));
  const named = <Row extends { readonly id: string; readonly date: Day }>(
    list: readonly { readonly value: Row }[],
  ) => own(list).map((row) => ({ ...row, rowId: row.id, id: firstId(row.id) }));
  const valuesOf = <Value>(list: readonly { readonly value: Value }[]) =>
    list.map(({ value }) => value);
  return {
    surveys: valuesOf(lists.surveys),
    grades: valuesOf(lists.grades),
    groups: valuesOf(lists.groups),
    findings: own(lists.findings).map(published),
    candidates: named(lists.candidates).map(published),
    choices: own(lists.choices),
    preparations: named(lists.preparations).map((row) => ({
      ...row,
      parts: row.parts.map(firstId),
    })),
    waits: named(
      lists.waits.map(({ value: { until: ended, ...wait } }) => ({ value: { ...wait, ended } })),
    ),
  };
}
