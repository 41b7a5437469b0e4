import type { Project } from '../book/types.ts';
import { showMoney } from '../money/money.ts';
import { showShortDay } from '../time/day.ts';
import { showDuration } from '../time/duration.ts';
import { type Card, machineOf } from './draw-card.ts';

/** The card of a project: its name and what was put into it so far. */
export function projectCard(
  project: Project,
  { owner, language }: { owner: string; language: string },
): Card {
  const { info, now, entries, lastDay } = project;
  const hours = showDuration(now.hoursByPhase.total.value);
  const money = showMoney(now.costsByCategory.total.value, language);
  return {
    over: machineOf(project),
    title: info.name,
    lines: [info.summary, `${hours} hours worked, ${money} spent, ${entries.length} entries`],
    block: [
      ['Owner', owner],
      ['Document', 'Project sheet'],
      ['Date', showShortDay(lastDay, language)],
      ['State', info.status === 'finished' ? 'Finished' : 'Under way'],
    ],
  };
}
