import { effectOf } from '../book/effect.ts';
import { rowLine } from '../book/row-line.ts';
import type { Project } from '../book/types.ts';
import type { Correction } from '../ledger/corrections.ts';
import { showMoney } from '../money/money.ts';
import { showDuration } from '../time/duration.ts';
import { wordsOf } from '../words/words.ts';

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
  const { dossier, marks } = wordsOf(language);
  const line = (id: string) => rowLine(project, id, language) ?? marks.withheld;
  return project.corrections.map((correction) => {
    const { kind, old, by } = correction;
    const isTold = tellsMoney || !ABOUT_MONEY.has(kind);
    const told = (id: string) => (isTold ? line(id) : dossier.rows.corrections.aboutMoney);
    return {
      correction,
      before: told(old),
      after: by === undefined ? marks.corrections.nothing : told(by),
      effect: isTold ? effectText(project, correction, language) : '–',
    };
  });
}

function effectText(project: Project, correction: Correction, language: string): string {
  const { marks } = wordsOf(language);
  const { money, minutes, withheld } = effectOf(project, correction);
  if (withheld) return marks.withheld;
  if (money) return showMoney(money, language);
  return minutes === undefined ? marks.corrections.noEffect : `${showDuration(minutes)} h`;
}
