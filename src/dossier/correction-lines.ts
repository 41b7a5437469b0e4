import { effectOf } from '../book/effect.ts';
import { rowLine } from '../book/row-line.ts';
import type { Project } from '../book/types.ts';
import type { Correction } from '../ledger/corrections.ts';
import { WITHHELD } from '../ledger/withheld.ts';
import { showMoney } from '../money/money.ts';
import { showDuration } from '../time/duration.ts';

/** A correction as the dossier prints it. */
export interface CorrectionLine {
  readonly correction: Correction;
  readonly before: string;
  readonly after: string;
  readonly effect: string;
}

/** Kinds of rows that are about money, so that a dossier without money says no more of them than that they are. */
const ABOUT_MONEY: ReadonlySet<string> = new Set(['costs', 'orders', 'budgets', 'rates']);

/** All corrections of a project in words; without amounts where its dossier tells none. */
export function correctionLines(project: Project, language: string): readonly CorrectionLine[] {
  const tellsMoney = project.info.dossier.costs !== 'none';
  const line = (id: string) => rowLine(project, id, language) ?? WITHHELD;
  return project.corrections.map((correction) => {
    const { kind, old, by } = correction;
    const isTold = tellsMoney || !ABOUT_MONEY.has(kind);
    const words = (id: string) => (isTold ? line(id) : 'a row about money');
    return {
      correction,
      before: words(old),
      after: by === undefined ? 'nothing: it was withdrawn' : words(by),
      effect: isTold ? effectText(project, correction, language) : '–',
    };
  });
}

function effectText(project: Project, correction: Correction, language: string): string {
  const { money, minutes, withheld } = effectOf(project, correction);
  if (withheld) return WITHHELD;
  if (money) return showMoney(money, language);
  return minutes === undefined ? 'none' : `${showDuration(minutes)} h`;
}
