import type { PartRow, View } from '../book/types.ts';
import { standsOn } from '../ledger/standing.ts';
import type { Source } from '../model/kinds.ts';
import { type Day, daysBetween } from '../time/day.ts';
import type { ChainStep, LooseStep, StepKind } from './chain-step.ts';
import { foundStep } from './found.ts';
import { type PreparationOnDay, preparationsOn } from './preparations.ts';
import { type Whereabouts, whereaboutsOf } from './whereabouts.ts';

/** How a part came to be where it is, as of a day. */
export interface Chain {
  readonly day: Day;
  readonly part: PartRow;
  readonly steps: readonly ChainStep[];
  readonly preparations: readonly PreparationOnDay[];
  readonly where: Whereabouts;
}

/** The chain of a part as of the view's day; undefined for a part that was not known by then. */
export function chainOf(view: View, id: string): Chain | undefined {
  const isKnown = view.parts.some((item) => item.part.id === id);
  const part = view.project.partRows.find((row) => row.id === id && standsOn(row, view.day));
  if (!isKnown || part === undefined) return undefined;

  const preparations = preparationsOn(view).filter(({ row }) => row.parts.includes(id));
  const loose = [
    foundStep(view, part),
    chosenStep(view, id),
    ...stepsOf(part, sourceOf(view, part)),
    ...preparations.flatMap(stepsOfPreparation),
  ].filter((step): step is LooseStep => step !== undefined && step.date <= view.day);
  return {
    day: view.day,
    part,
    steps: inOrder(loose),
    preparations,
    where: whereaboutsOf(part, preparations, view),
  };
}

function sourceOf({ project }: View, part: PartRow): Source | undefined {
  return project.sources.find(({ id }) => id === part.source);
}

/** The newest choice among the part's candidates; a change of mind replaces the earlier one here. */
function chosenStep({ project, day }: View, id: string): LooseStep | undefined {
  const own = new Set(project.candidates.filter(({ part }) => part === id).map((row) => row.id));
  const choice = project.choices.findLast(
    (row) => standsOn(row, day) && row.candidates.some((candidate) => own.has(candidate)),
  );
  return choice && { what: 'chosen', date: choice.date, row: choice.id, note: choice.because };
}

function stepsOf(part: PartRow, source: Source | undefined): LooseStep[] {
  const dated = [
    ['wanted', part.wanted],
    ['ordered', part.ordered],
    [gotStep(source), part.got],
    ['fitted', part.fitted],
    ['for-sale', part.forSale],
    ['scrapped', part.scrapped],
    ['sold', part.sold],
  ] as const;
  return dated.flatMap(([what, date]) => (date ? [{ what, date, row: part.rowId }] : []));
}

/** What getting a part means depends on where it came from. */
function gotStep(source: Source | undefined): StepKind {
  if (source?.kind === 'new') return 'bought';
  return source?.kind === 'made' ? 'made' : 'taken';
}

function stepsOfPreparation({ row, back }: PreparationOnDay): LooseStep[] {
  const begun: LooseStep = {
    what: row.out ? 'sent-out' : 'work-begun',
    date: row.date,
    row: row.rowId,
    note: row.what,
    preparation: row.kind,
  };
  if (back === undefined) return [begun];
  return [begun, { what: row.out ? 'back' : 'work-done', date: back, row: row.rowId }];
}

/** By date; steps of one day stay as they came, which is the order of a part's life. */
function inOrder(loose: readonly LooseStep[]): ChainStep[] {
  const sorted = [...loose].sort((a, b) => (a.date === b.date ? 0 : a.date < b.date ? -1 : 1));
  return sorted.map((step, index) => {
    const before = sorted[index - 1];
    return { ...step, days: before && daysBetween(before.date, step.date) };
  });
}
