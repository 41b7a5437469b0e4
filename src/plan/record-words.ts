import type { Project } from '../book/types.ts';
import { showDuration } from '../time/duration.ts';
import type { Words } from '../words/words.ts';
import { dayNumber } from './day-number.ts';
import { meanPace } from './hours-left.ts';
import { forecastHistory, forecastRecord, type PastRecord } from './project-forecast.ts';
import { planOn } from './project-plan.ts';

/** How often past forecasts came true and, where they did not, what the worst of them misjudged; empty without any. */
export function recordWords(project: Project, words: Words): string[] {
  const said = words.plan.forecast.record;
  const records = forecastRecord(project);
  const count = (of: Miss | 'held') => records.reduce((sum, one) => sum + one[of], 0);
  const [held, late, early] = [count('held'), count('missedLate'), count('missedEarly')];
  const all = held + late + early;
  if (all === 0) return [];
  const share = Math.round((100 * held) / all);
  return [
    said.counts({ all, held, share, late, early }),
    ...whyPassed(project, worst(records, 'missedLate'), said),
    ...whyBeaten(project, worst(records, 'missedEarly'), said),
  ];
}

type Said = Words['plan']['forecast']['record'];

type Miss = 'missedLate' | 'missedEarly';

/** The phase missed most often in one way; the first of several. */
function worst(records: readonly PastRecord[], by: Miss): PastRecord | undefined {
  const [first] = records
    .filter((one) => one.phase !== undefined && one[by] > 0)
    .sort((one, other) => other[by] - one[by]);
  return first;
}

function whyPassed({ now }: Project, record: PastRecord | undefined, said: Said): string[] {
  const figures = now.phases.find(({ phase }) => phase.id === record?.phase);
  if (record === undefined || figures === undefined || figures.phase.plannedHours === 0) return [];
  const { phase, hours } = figures;
  const ratio = (hours.value / phase.plannedHours).toFixed(2);
  return [said.passedMost(record.missedLate, phase.name, ratio)];
}

/** Hours a week that the beaten forecasts went by, beside those that came from their days until the finish. */
function whyBeaten(project: Project, record: PastRecord | undefined, said: Said): string[] {
  const figures = project.now.phases.find(({ phase }) => phase.id === record?.phase);
  if (record === undefined || figures?.finished === undefined) return [];
  const { phase, finished } = figures;
  const finish = dayNumber(finished);
  const beaten = forecastHistory(project).filter(
    ({ result }) =>
      result.kind === 'forecast' &&
      result.phases.some(({ id, low }) => id === phase.id && finish < low),
  );
  const gone = beaten.map(({ entry }) => meanPace(planOn(project.asOf(entry.date)).pace));
  const came = beaten.map(({ entry }) => {
    const rows = project.now.hours.filter(({ date }) => date > entry.date && date <= finished);
    const weeks = (finish - dayNumber(entry.date)) / 7;
    return rows.reduce((sum, { hours }) => sum + hours, 0) / weeks;
  });
  const mean = (numbers: readonly number[]) =>
    showDuration(Math.round(numbers.reduce((sum, one) => sum + one, 0) / numbers.length));
  return [
    said.beatenMost({
      times: record.missedEarly,
      phase: phase.name,
      gone: mean(gone),
      came: mean(came),
    }),
  ];
}
