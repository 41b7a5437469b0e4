// `npm run house`: what the project brings along, how large it is and under which licences; then what is known to be unsafe of it.
import { auditOf } from './audit.ts';
import { complaints, numbersOf } from './limits.ts';
import { readPackages } from './packages.ts';

const packages = readPackages('.');
const { direct, all } = packages;
const numbers = numbersOf(packages);
const here = all.filter(({ bytes }) => bytes !== undefined).length;
console.log(
  `direct: ${direct.production} to make a site, ${direct.development} more to work on the code`,
);
console.log(
  `installed: ${numbers.productionPackages} packages of ${numbers.productionMegabytes.toFixed(0)} MB to make a site; ${here} of ${numbers.allMegabytes.toFixed(0)} MB in all, ${all.length} with those for other machines`,
);
const byLicence = Map.groupBy(all, ({ licence }) => licence);
for (const [licence, some] of [...byLicence].sort(([, a], [, b]) => b.length - a.length))
  console.log(`  ${String(some.length).padStart(4)}  ${licence}`);
const audit = auditOf();
console.log(audit.told);
const wrong = [...complaints(packages), ...audit.unsafe];
for (const line of wrong) console.error(line);
process.exitCode = wrong.length > 0 ? 1 : 0;
