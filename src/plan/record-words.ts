import type { Project } from '../book/types.ts';
import { showDuration } from '../time/duration.ts';
import { dayNumber } from './day-number.ts';
import { meanPace } from './hours-left.ts';
import { forecastHistory, forecastRecord, type PastRecord } from './project-forecast.ts';
import { planOn } from './project-plan.ts';

/** How often past forecasts came true and, where they did not, what the worst of them misjudged; empty without any. */
export function recordWords(project: Project): string[] {
  const records = forecastRecord(project);
  const count = (of: Miss | 'held') => records.reduce((sum, one) => sum + one[of], 0);
  const [held, late, early] = [count('held'), count('missedLate'), count('missedEarly')];
  const all = held + late + early;
  if (all === 0) return [];
  const share = Math.round((100 * held) / all);
  return [
    `Entries forecast a finish that is known by now ${all} times, as a range that should hold it in eight of ten. Held: ${held}, ${share} %; passed: ${late}; beaten: ${early}.`,
    ...whyPassed(project, worst(records, 'missedLate')),
    ...whyBeaten(project, worst(records, 'missedEarly')),
  ];
}

type Miss = 'missedLate' | 'missedEarly';

/** The phase missed most often in one way; the first of several. */
function worst(records: readonly PastRecord[], by: Miss): PastRecord | undefined {
  const [first] = records
    .filter((one) => one.phase !== undefined && one[by] > 0)
    .sort((one, other) => other[by] - one[by]);
  return first;
}

function whyPassed({ now }: Project, record: PastRecord | undefined): string[] {
  const figures = now.phases.find(({ phase }) => phase.id === record?.phase);
  if (record === undefined || figures === undefined || figures.phase.plannedHours === 0) return [];
  const { phase, hours } = figures;
  const ratio = (hours.value / phase.plannedHours).toFixed(2);
  return [
    `Passed most often (${record.missedLate}): ${phase.name}, which took ${ratio} times its planned hours.`,
  ];
}

/** Hours a week that the beaten forecasts went by, beside those that came from their days until the finish. */
function whyBeaten(project: Project, record: PastRecord | undefined): string[] {
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
    `Beaten most often (${record.missedEarly}): ${phase.name}, forecast at a pace of ${mean(gone)} h a week, where ${mean(came)} h came.`,
  ];
}
