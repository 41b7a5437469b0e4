import { addDays, type Day } from '../../time/day.ts';
import type { Chance } from './chance.ts';
import { SOURCES, type System, WORK } from './definitions.ts';
import { deed, partName, purchase, sentence } from './prose.ts';
import type { RowCounts } from './size.ts';
import { dayAt, firstDay, lastDay, later, phaseOn, phaseSpans } from './span.ts';
import type { Cells } from './table-file.ts';

/** What a row is made from: its number among its kind, its day, and chance. */
interface Turn {
  readonly number: number;
  readonly date: Day;
  readonly chance: Chance;
  readonly counts: RowCounts;
}

/** Rows of every kind but readings, by the names of their files; each kind lies evenly over the years. */
export function ledgerRows(
  counts: RowCounts,
  systems: readonly System[],
  chance: Chance,
): Record<string, Cells[]> {
  const spread = (count: number, row: (turn: Turn) => Cells) =>
    Array.from({ length: count }, (_, index) =>
      row({ number: index + 1, date: dayAt(index / count), chance, counts }),
    );
  return {
    hours: corrected(spread(counts.hours, hours), chance),
    costs: corrected([...vehicles(), ...spread(counts.costs - 2, cost)], chance),
    parts: spread(counts.parts, (turn) => part(turn, systems)),
    searches: spread(counts.searches, search),
    orders: spread(counts.orders, order),
    preparations: spread(counts.preparations, preparation),
    waits: spread(counts.waits, wait),
    budgets: spread(counts.budgets, budget),
    withdrawals: spread(counts.withdrawals, withdrawal),
    rates: [
      { id: 'x-1', date: firstDay, from: 'EUR', to: 'GBP', rate: '0.8648', source: 'invented' },
    ],
  };
}

/** One row in a hundred replaces the one nine rows before it, some days after. */
function corrected(rows: readonly Cells[], chance: Chance): Cells[] {
  return rows.map((row, index) => {
    const wrong = rows[index - 9];
    if (index % 100 !== 50 || wrong === undefined) return row;
    const recorded = later(wrong.date as Day, chance.whole(10, 60));
    const { id } = row;
    return { ...wrong, id, recorded, corrects: wrong.id, because: sentence(chance) };
  });
}

/** A part of about that time, at most so many before the one of that day. */
const partNear = ({ number, counts, chance }: Turn, of: number, back = 5) => {
  const near = Math.ceil((number / of) * counts.parts);
  return `p-${Math.max(1, near - chance.whole(0, back))}`;
};

const price = (chance: Chance, most: number) =>
  `${chance.whole(1, most)}.${String(chance.whole(0, 99)).padStart(2, '0')}`;

const hours = ({ number, date, chance }: Turn): Cells => ({
  id: `h-${number}`,
  date,
  hours: `${chance.whole(0, 4)}:${chance.pick(['15', '30', '45'])}`,
  phase: phaseOn(date),
  work: chance.pick(WORK),
  who: chance.happens(0.15) ? 'helper' : undefined,
  what: deed(chance),
});

const vehicles = (): Cells[] =>
  ['base', 'donor'].map((source, index) => ({
    ...{ id: `v-${index + 1}`, date: firstDay, amount: `${1500 - 900 * index}.00` },
    ...{
      category: 'vehicle',
      phase: 'phase-1',
      source,
      what: `The machine as it stood: ${source}`,
    },
  }));

const CATEGORIES = ['part', 'part', 'material', 'consumable', 'tool', 'service', 'transport'];

function cost(turn: Turn): Cells {
  const { number, date, chance, counts } = turn;
  const category = chance.pick(CATEGORIES);
  const ofPart = category === 'part' || category === 'service';
  const paid = ofPart && number % 25 === 0 ? orderBefore(number / counts.costs, counts) : undefined;
  const abroad = paid === undefined && chance.happens(0.03);
  return {
    ...{ id: `c-${number}`, date, amount: price(chance, 140) + (abroad ? ' EUR' : '') },
    ...{ category, phase: phaseOn(date), source: ofPart ? chance.pick(SOURCES.slice(2)) : 'base' },
    parts: ofPart ? [...new Set([1, 2].map(() => partNear(turn, counts.costs)))].join(' ') : '',
    ...{ what: purchase(chance), supplier: `Supplier ${chance.whole(1, 60)}`, order: paid },
    receipt: `${date.slice(2, 4)}-${number}`,
  };
}

/** An order of some time before. */
function orderBefore(share: number, { orders }: RowCounts): string | undefined {
  const number = Math.floor(share * orders) - 1;
  return number >= 1 ? `o-${number}` : undefined;
}

function part({ number, date, chance }: Turn, systems: readonly System[]): Cells {
  const wanted = chance.happens(0.04);
  const own = chance.happens(0.35);
  const got = own ? firstDay : date;
  const fitted = later(date, chance.whole(100, 300));
  return {
    ...{ id: `p-${number}`, name: `${partName(chance)} ${number}` },
    system: chance.pick(systems).id,
    source: own ? chance.pick(['base', 'repaired', 'donor']) : chance.pick(['new', 'made']),
    phase: phaseOn(date),
    mass: chance.happens(0.4) ? `${chance.whole(1, 90) / 10} kg` : undefined,
    ...{ wanted: wanted ? date : undefined, estimate: wanted ? price(chance, 90) : undefined },
    got: wanted ? undefined : got,
    fitted: wanted || fitted > lastDay ? undefined : fitted,
    note: chance.happens(0.3) ? sentence(chance) : undefined,
  };
}

const search = (turn: Turn): Cells => ({
  id: `s-${turn.number}`,
  date: turn.date,
  part: partNear(turn, turn.counts.searches),
  result: turn.chance.pick(['none', 'none', 'listed-not-held', 'promised']),
  price: turn.chance.happens(0.5) ? price(turn.chance, 90) : undefined,
  place: `Place ${turn.chance.whole(1, 40)}`,
  note: deed(turn.chance),
});

const order = (turn: Turn): Cells => ({
  ...{ id: `o-${turn.number}`, date: turn.date, amount: price(turn.chance, 400) },
  ...{ category: 'part', phase: phaseOn(turn.date), source: 'new' },
  ...{ parts: partNear(turn, turn.counts.orders), what: purchase(turn.chance) },
  supplier: `Supplier ${turn.chance.whole(1, 60)}`,
  closed: upTo(addDays(turn.date, 300)),
});

const upTo = (day: Day) => (day > lastDay ? undefined : day);

const preparation = (turn: Turn): Cells => ({
  ...{
    id: `q-${turn.number}`,
    date: turn.date,
    parts: partNear(turn, turn.counts.preparations, 0),
  },
  ...{ kind: turn.chance.pick(['blasting', 'coating', 'machining', 'test']) },
  ...{ what: deed(turn.chance), out: 'true', due: addDays(turn.date, 10) },
  back: upTo(addDays(turn.date, turn.chance.whole(5, 40))),
});

const wait = ({ number, date, chance }: Turn): Cells => ({
  ...{ id: `w-${number}`, date, phase: phaseOn(date) },
  ...{ for: chance.pick(['weather', 'person', 'money', 'other']), what: deed(chance) },
  expected: addDays(date, chance.whole(3, 30)),
  until: upTo(addDays(date, chance.whole(3, 60))),
});

/** The first lines are the budget, one a phase; the others change one. */
function budget({ number, date, chance }: Turn): Cells {
  const first = number <= phaseSpans.length;
  return {
    ...{ id: `b-${number}`, date: first ? firstDay : date, amount: price(chance, 9000) },
    phase: first ? `phase-${number}` : chance.pick(phaseSpans).id,
    because: first ? undefined : sentence(chance),
  };
}

const withdrawal = ({ number, counts, chance }: Turn): Cells => {
  const row = Math.floor((number / (counts.withdrawals + 1)) * counts.hours);
  return {
    ...{ id: `y-${number}`, date: addDays(dayAt(row / counts.hours), 200) },
    ...{ row: `h-${row - (row % 100) + 7}`, because: sentence(chance) },
  };
};
