import type { ReadContent, ReadProject } from '../read/content.ts';
import { type Problem, sortProblems } from '../read/problem.ts';
import { type Day, dayIn } from '../time/day.ts';
import { askingHasADay } from './asking.ts';
import { boughtPartsAreHad } from './bought.ts';
import { budgetsFit } from './budgets.ts';
import { calendarIsPossible } from './calendar.ts';
import { shownCalloutsAreThere } from './callouts.ts';
import { choicesFit } from './choices.ts';
import { componentsAreUsedRight } from './components.ts';
import { correctionsHold } from './corrections.ts';
import { costRowsFit } from './cost-rows.ts';
import { datesAreInOrder, nothingFromTheFuture } from './dates.ts';
import { daysHave24Hours } from './day-hours.ts';
import { shownDecisionsAreThere } from './decided.ts';
import { derivedSpecsWorkOut, exclusionsAreExplained, readingPhotosExist } from './derived.ts';
import { linksLeadToNoDraft } from './draft-links.ts';
import { entriesAreNamedByDay, momentsHaveAVideo, summariesAreWritten } from './entries.ts';
import { estimatesAreInOrder } from './estimates.ts';
import { findingsFit } from './findings.ts';
import { gradesAreInOrder } from './grades.ts';
import { identityIsOfAMachine } from './identity.ts';
import { idsAreUnique } from './ids.ts';
import { importsFit } from './imports.ts';
import { knownIds } from './known-ids.ts';
import { ownLanguageIsOne } from './languages.ts';
import { markedRowsStand } from './marked-rows.ts';
import { marksHold } from './marks.ts';
import { shownValuesAreMeasured } from './measured.ts';
import { amountsHaveCurrency } from './money.ts';
import { paymentsFitTheirOrders } from './orders.ts';
import { phasesDoNotLoop } from './phase-loop.ts';
import { photoPairsFit } from './photo-pairs.ts';
import { photoRecordsHaveFiles, shownPhotosAreDescribed, taggedPhotosAreHidden } from './photos.ts';
import { plannedHoursAreInOrder } from './planned-hours.ts';
import { portionsFit } from './portions.ts';
import { preparationsFit } from './preparations.ts';
import { calibrationInDate, checkSite, isTimeZone, timeZoneExists } from './project.ts';
import { receiptsExist } from './receipts.ts';
import { referencesExist } from './references.ts';
import type { Rule } from './rule.ts';
import { unitsFitQuantities } from './units.ts';
import { waitsFit } from './waits.ts';
import { withheldAmountsHide } from './withheld.ts';
import { hoursAreOfAMachine } from './worked-on.ts';

const rules: readonly Rule[] = [
  timeZoneExists,
  ownLanguageIsOne,
  identityIsOfAMachine,
  idsAreUnique,
  referencesExist,
  nothingFromTheFuture,
  datesAreInOrder,
  daysHave24Hours,
  amountsHaveCurrency,
  costRowsFit,
  portionsFit,
  withheldAmountsHide,
  budgetsFit,
  askingHasADay,
  hoursAreOfAMachine,
  paymentsFitTheirOrders,
  estimatesAreInOrder,
  correctionsHold,
  unitsFitQuantities,
  derivedSpecsWorkOut,
  exclusionsAreExplained,
  readingPhotosExist,
  gradesAreInOrder,
  findingsFit,
  choicesFit,
  photoRecordsHaveFiles,
  shownPhotosAreDescribed,
  taggedPhotosAreHidden,
  photoPairsFit,
  shownCalloutsAreThere,
  phasesDoNotLoop,
  plannedHoursAreInOrder,
  calendarIsPossible,
  waitsFit,
  preparationsFit,
  boughtPartsAreHad,
  entriesAreNamedByDay,
  momentsHaveAVideo,
  summariesAreWritten,
  componentsAreUsedRight,
  linksLeadToNoDraft,
  shownValuesAreMeasured,
  shownDecisionsAreThere,
  calibrationInDate,
  receiptsExist,
  marksHold,
  markedRowsStand,
  importsFit,
];

/** All problems of a content folder, those of reading included, in the order a builder works through them. */
export function checkContent(content: ReadContent, now: Date): Problem[] {
  const found = content.projects.flatMap((project) => {
    const input = { project, today: todayOf(project, now), known: knownIds(project) };
    return rules.flatMap((rule) => rule(input));
  });
  return sortProblems([...content.problems, ...checkSite(content), ...found]);
}

/** Today in a project's own time zone. */
export function todayOf(project: ReadProject, now: Date): Day {
  const zone = project.info?.value.timeZone ?? 'UTC';
  return dayIn(isTimeZone(zone) ? zone : 'UTC', now);
}
