import type { ReadContent, ReadProject } from '../read/content.ts';
import { type Problem, sortProblems } from '../read/problem.ts';
import { type Day, dayIn } from '../time/day.ts';
import { componentsAreUsedRight } from './components.ts';
import { datesAreInOrder, nothingFromTheFuture } from './dates.ts';
import { daysHave24Hours } from './day-hours.ts';
import { derivedSpecsWorkOut, exclusionsAreExplained, readingPhotosExist } from './derived.ts';
import { entriesAreNamedByDay, momentsHaveAVideo } from './entries.ts';
import { idsAreUnique } from './ids.ts';
import { knownIds } from './known-ids.ts';
import { shownValuesAreMeasured } from './measured.ts';
import { amountsHaveCurrency } from './money.ts';
import { phasesDoNotLoop } from './phase-loop.ts';
import { photoRecordsHaveFiles, shownPhotosAreDescribed, taggedPhotosAreHidden } from './photos.ts';
import { calibrationInDate, checkSite, isTimeZone, timeZoneExists } from './project.ts';
import { referencesExist } from './references.ts';
import type { Rule } from './rule.ts';
import { unitsFitQuantities } from './units.ts';

const rules: readonly Rule[] = [
  timeZoneExists,
  idsAreUnique,
  referencesExist,
  nothingFromTheFuture,
  datesAreInOrder,
  daysHave24Hours,
  amountsHaveCurrency,
  unitsFitQuantities,
  derivedSpecsWorkOut,
  exclusionsAreExplained,
  readingPhotosExist,
  photoRecordsHaveFiles,
  shownPhotosAreDescribed,
  taggedPhotosAreHidden,
  phasesDoNotLoop,
  entriesAreNamedByDay,
  momentsHaveAVideo,
  componentsAreUsedRight,
  shownValuesAreMeasured,
  calibrationInDate,
];

/** All problems of a content folder, those of reading included, in the order a builder works through them. */
export function checkContent(content: ReadContent, now: Date): Problem[] {
  const found = content.projects.flatMap((project) => {
    const input = { project, today: todayOf(project, now), known: knownIds(project) };
    return rules.flatMap((rule) => rule(input));
  });
  return sortProblems([...content.problems, ...checkSite(content), ...found]);
}

function todayOf(project: ReadProject, now: Date): Day {
  const zone = project.info?.value.timeZone ?? 'UTC';
  return dayIn(isTimeZone(zone) ? zone : 'UTC', now);
}
