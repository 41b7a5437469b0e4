import type { Project } from '../book/types.ts';
import { showMeasured } from '../measure/show.ts';
import type { SpecFigures } from '../measure/spec-figures.ts';
import { changeWords } from '../measure/words.ts';
import { showShortDay } from '../time/day.ts';
import { wordsOf } from '../words/words.ts';
import { type Card, machineOf } from './draw-card.ts';

/** The card of a spec: its latest value with U, what it was before, and the verdict. */
export function specCard(
  { spec, latest, change, verdict }: SpecFigures,
  project: Project,
  { owner, language }: { owner: string; language: string },
): Card {
  const { general, log } = wordsOf(language);
  const { card } = log.sharing;
  const { otherUnits } = project.info;
  const show = (value: Parameters<typeof showMeasured>[0]) =>
    showMeasured(value, { language, otherUnits }).text;
  const lines = [
    change
      ? card.beforeAndAfter({
          before: show(change.before),
          after: show(change.after),
          changed: changeWords(change, wordsOf(language)),
        })
      : '',
    verdict ? card.verdicts[verdict] : '',
  ].filter(Boolean);
  return {
    over: machineOf(project),
    title: spec.name,
    value: latest ? show(latest) : general.notYetMeasured,
    lines,
    block: [
      [card.owner, owner],
      [card.document, card.spec],
      [card.date, showShortDay(latest?.date ?? project.lastDay, language)],
      [card.uncertainty, latest && latest.U === undefined ? card.unknown : card.known],
    ],
  };
}
