import type { PartRow, View } from '../book/types.ts';
import { standsOn } from '../ledger/standing.ts';
import type { Day } from '../time/day.ts';
import type { LooseStep } from './chain-step.ts';

/** How a part was first come upon: on the machine that it came with, by a survey, or by a search; whichever was first. */
export function foundStep({ project, day }: View, part: PartRow): LooseStep | undefined {
  const rowsOf = <Row extends { readonly part: string; readonly date: Day }>(
    rows: readonly Row[],
  ) => rows.filter((row) => row.part === part.id && standsOn(row, day));
  const [finding] = rowsOf(project.findings);
  const [search] = rowsOf(project.searches);
  const machine = project.sources.find(({ id }) => id === part.source);
  const ways: (LooseStep | undefined)[] = [
    machine?.acquired && {
      what: 'found-on',
      date: machine.acquired,
      row: undefined,
      note: machine.name,
    },
    finding && { what: 'found-by-survey', date: finding.date, row: finding.id },
    search && { what: 'searched', date: search.date, row: search.id },
  ];
  return ways
    .filter((way): way is LooseStep => way !== undefined && way.date <= day)
    .reduce<LooseStep | undefined>(
      (first, way) => (first === undefined || way.date < first.date ? way : first),
      undefined,
    );
}
