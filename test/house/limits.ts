import { notFree } from './licences.ts';
import type { Package, Packages } from './packages.ts';

/** How much there may be before somebody has to say why: what there is now, and a little room. */
export const LIMITS = {
  directProduction: 15,
  productionPackages: 260,
  allPackages: 840,
  productionMegabytes: 190,
  allMegabytes: 880,
} as const;

/** The numbers that the limits are for; packages for other machines are counted where all are, but have no size. */
export function numbersOf({ direct, all }: Packages): Record<keyof typeof LIMITS, number> {
  const production = all.filter((one) => one.production);
  return {
    directProduction: direct.production,
    productionPackages: production.filter(({ bytes }) => bytes !== undefined).length,
    allPackages: all.length,
    productionMegabytes: megabytes(production),
    allMegabytes: megabytes(all),
  };
}

const megabytes = (some: readonly Package[]) =>
  some.reduce((sum, { bytes = 0 }) => sum + bytes, 0) / 1e6;

/** What is over a limit, and each package whose licence is not free. */
export function complaints(packages: Packages): string[] {
  const numbers = numbersOf(packages);
  const over = (Object.keys(LIMITS) as (keyof typeof LIMITS)[])
    .filter((name) => numbers[name] > LIMITS[name])
    .map((name) => `${name}: ${Math.ceil(numbers[name])}, but ${LIMITS[name]} at most`);
  const unfree = packages.all
    .map(({ name, licence }) => ({ name, lacking: notFree(licence) }))
    .filter(({ lacking }) => lacking.length > 0)
    .map(({ name, lacking }) => `${name}: licence ${lacking.join(' and ')} is not on the list`);
  return [...over, ...unfree];
}
