import type { Project } from '../book/types.ts';
import { showMoney } from '../money/money.ts';
import { showShortDay } from '../time/day.ts';
import { showDuration } from '../time/duration.ts';
import { wordsOf } from '../words/words.ts';
import { type Card, machineOf } from './draw-card.ts';

/** The card of a project: its name and what was put into it so far. */
export function projectCard(
  project: Project,
  { owner, language }: { owner: string; language: string },
): Card {
  const { info, now, entries, lastDay } = project;
  const { card } = wordsOf(language).log.sharing;
  const hours = showDuration(now.hoursByPhase.total.value);
  const money = showMoney(now.costsByCategory.total.value, language);
  return {
    over: machineOf(project),
    title: info.name,
    lines: [info.summary, card.soFar({ hours, money, entries: entries.length })],
    block: [
      [card.owner, owner],
      [card.document, wordsOf(language).log.project.document],
      [card.date, showShortDay(lastDay, language)],
      [card.state, info.status === 'finished' ? card.finished : card.underWay],
    ],
  };
}
