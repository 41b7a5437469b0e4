import { yearsOf } from '../ledger/by-year.ts';
import { siteNow } from './now.ts';

/** One page for every calendar year of every project's costs. */
export const costsYearPaths = () => yearPaths('costs');

/** One page for every calendar year of every project's hours. */
export const hoursYearPaths = () => yearPaths('hours');

async function yearPaths(what: 'costs' | 'hours') {
  const { here } = await siteNow();
  return here.flatMap((project) =>
    yearsOf(project[what]).map((year) => ({ params: { project: project.id, year } })),
  );
}
