import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { addDays, type Day } from '../time/day.ts';

/** How many rows of each kind the made-up ledger has. */
const ROWS = { parts: 4_000, hours: 40_000, costs: 40_000, readings: 10_000, searches: 6_000 };

/** All its rows. */
export const LEDGER_ROWS: number = Object.values(ROWS).reduce((sum, count) => sum + count, 0);

const FIRST = '2000-01-01' as Day;
const PHASES = ['strip', 'mend', 'paint', 'build'];

/** Writes the content folder of a machine that somebody has worked on for a quarter of a century. */
export async function writeLedger(folder: string): Promise<void> {
  const ledger = join(folder, 'engine', 'ledger');
  await mkdir(ledger, { recursive: true });
  await writeFile(join(folder, 'site.yaml'), SITE);
  for (const [name, text] of Object.entries(DEFINITIONS))
    await writeFile(join(folder, 'engine', name), text);
  const files = { parts, hours, costs, readings, searches };
  for (const [kind, row] of Object.entries(files)) {
    const count = ROWS[kind as keyof typeof ROWS];
    const lines = Array.from({ length: count }, (_, index) => row(index, dayOf(index, count)));
    await writeFile(
      join(ledger, `${kind}.csv`),
      `${HEADERS[kind as keyof typeof ROWS]}\n${lines.join('\n')}\n`,
    );
  }
}

/** Days spread evenly over 9000 days. */
function dayOf(index: number, count: number): Day {
  return addDays(FIRST, Math.floor((index * 9000) / count));
}

const HEADERS: Readonly<Record<keyof typeof ROWS, string>> = {
  parts: 'id,name,system,source,phase,got,fitted,note',
  hours: 'id,date,hours,phase,work,who,what',
  costs: 'id,date,amount,category,phase,source,parts,what,supplier,receipt',
  readings: 'id,date,spec,state,values,unit,instrument',
  searches: 'id,date,part,result,price,place,note',
};

const phase = (index: number) => PHASES[index % PHASES.length];
const parts = (i: number, day: Day) =>
  `p-${i},Valve ${i},valves,engine,${phase(i)},${day},${addDays(day, 90)},"Seat ground in, number ${i}"`;
const hours = (i: number, day: Day) =>
  `h-${i},${day},0:45,${phase(i)},fitting,,"Scraped and fitted, turn ${i}"`;
const costs = (i: number, day: Day) =>
  `c-${i},${day},${i % 900}.50,part,${phase(i)},engine,p-${i % ROWS.parts} p-${(i * 7) % ROWS.parts},Bar of bronze ${i},Foundry ${i % 50},${i}`;
const readings = (i: number, day: Day) =>
  `r-${i},${day},bore,before,${40 + (i % 9) / 100} 40.02 40.01,mm,gauge`;
const searches = (i: number, day: Day) =>
  `s-${i},${day},p-${i % ROWS.parts},listed-not-held,12.00,Shop ${i % 20},Letter ${i}`;

const SITE = `title: Bench
address: https://bench.example/
language: en-GB
builder: A. Builder
`;
const DEFINITIONS = {
  'project.yaml': `name: Engine
summary: A made-up engine with a long ledger.
machine: { maker: Hallin, model: 9, year: 1901, kind: engine }
currency: GBP
timeZone: Europe/London
work: [fitting]
people:
  - { id: a, name: A. Builder }
`,
  'sources.yaml': '- { id: engine, kind: base, name: The engine }\n',
  'phases.yaml': PHASES.map(
    (id) =>
      `- { id: ${id}, name: ${id}, summary: Work., planned-start: 2000-01-01, planned-finish: 2025-01-01, planned-hours: "90:00" }\n`,
  ).join(''),
  'specs.yaml':
    '- { id: bore, name: Bore, about: The bore., quantity: length, unit: mm, system: valves }\n',
  'instruments.yaml': '- { id: gauge, name: Bore gauge, quantity: length, step: 0.01 mm }\n',
};
