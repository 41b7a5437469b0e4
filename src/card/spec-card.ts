import type { Project } from '../book/types.ts';
import { showMeasured } from '../measure/show.ts';
import type { SpecFigures } from '../measure/spec-figures.ts';
import { changeWords } from '../measure/words.ts';
import { showShortDay } from '../time/day.ts';
import { type Card, machineOf } from './draw-card.ts';

/** The card of a spec: its latest value with U, what it was before, and the verdict. */
export function specCard(
  { spec, latest, change, verdict }: SpecFigures,
  project: Project,
  { owner, language }: { owner: string; language: string },
): Card {
  const { otherUnits } = project.info;
  const show = (value: Parameters<typeof showMeasured>[0]) =>
    showMeasured(value, { language, otherUnits }).text;
  const lines = [
    change
      ? `before ${show(change.before)}, after ${show(change.after)}: ${changeWords(change)}`
      : '',
    verdict
      ? `${verdict}${verdict === 'meets' ? ' its limits' : verdict === 'undecided' ? ' against its limits' : ' its limits'}, uncertainty counted`
      : '',
  ].filter(Boolean);
  return {
    over: machineOf(project),
    title: spec.name,
    value: latest ? show(latest) : 'not yet measured',
    lines,
    block: [
      ['Owner', owner],
      ['Document', 'Measured spec'],
      ['Date', showShortDay(latest?.date ?? project.lastDay, language)],
      ['Uncertainty', latest && latest.U === undefined ? 'not known' : 'U at 95 %'],
    ],
  };
}
