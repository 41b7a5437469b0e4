import type { Breakdown, Figure } from '../book/figure.ts';
import type { View } from '../book/types.ts';
import { type Money, negate, sum } from '../money/money.ts';
import type { PartState } from '../parts/state.ts';
import type { Said } from '../words/said.ts';
import type { Words } from '../words/words.ts';
import { bearerOf, machineIds, rowsByBearer } from './bearer.ts';
import type { CostRow } from './cost-row.ts';
import { costsBy, shareOut, sumCosts } from './costs.ts';
import { type DonorAccount, donorAccounts } from './donor.ts';
import { stated } from './stated.ts';

/** What a part really cost up to a day. */
export interface PartCost {
  readonly id: string;
  readonly name: string;
  readonly state: PartState | undefined;
  /** Its shares of the rows that are its own. */
  readonly direct: Figure<Money, CostRow>;
  /** Its share of the net cost of the donor that it came from, and that donor's id. */
  readonly donor: { readonly source: string; readonly money: Money } | undefined;
  readonly total: Money;
  /** What a new one would have cost, and how much less was spent. */
  readonly newPrice: Money | undefined;
  readonly saved: Money | undefined;
}

/** What every part cost, and who bears all that was spent. */
export interface PartCosts {
  readonly parts: readonly PartCost[];
  /** What the parts bear, donors shared over them included. */
  readonly inParts: Money;
  /** Every row once: the parts that it names, the machine it was paid for whole, or neither. */
  readonly bearers: Breakdown<Money, CostRow>;
}

/** What each part had cost on the day of a view. */
export function partCosts(view: View): PartCosts {
  const { currency } = view.project;
  const accounts = donorAccounts(view);
  const own = Map.groupBy(
    shareOut(rowsByBearer(view).get('parts') ?? [], ({ parts }) => parts),
    ({ key }) => key,
  );
  const shares = new Map(
    accounts.flatMap(({ source, shares: bearing }) =>
      bearing.map(({ part, money }) => [part.id, { source: source.id, money }] as const),
    ),
  );
  const ids = new Set([...view.parts.map(({ part }) => part.id), ...own.keys()]);
  const named = partsById(view);
  const parts = [...ids].map((id) => {
    const direct = sumCosts(own.get(id)?.map(({ row }) => row) ?? [], currency);
    return partCost(id, { direct, donor: shares.get(id), known: named.get(id), currency });
  });
  const inParts = sum(
    parts.map(({ total }) => total),
    currency,
  );
  return { parts, inParts, bearers: bearers(view, accounts) };
}

function bearers(view: View, accounts: readonly DonorAccount[]): PartCosts['bearers'] {
  const { currency, sources } = view.project;
  const machines = machineIds(view);
  const named = (key: string, name: (said: Words['money']['partCosts']['bearers']) => string) =>
    [key, ({ money }: Words) => name(money.partCosts.bearers)] as const;
  const names = new Map<string, Said>([
    named('parts', (said) => said.parts),
    ...sources.map(({ id, name }) => named(`machine-${id}`, (said) => said.machine(name))),
    ...accounts.map(({ source: { id, name }, shares }) =>
      named(`machine-${id}`, (said) =>
        shares.length > 0 ? said.shared(name) : said.notShared(name),
      ),
    ),
    named('rest', (said) => said.rest),
  ]);
  return costsBy(view.costs, currency, {
    keyOf: (row) => {
      const bearer = bearerOf(row, machines);
      return bearer === 'machine' ? `machine-${row.source}` : bearer;
    },
    nameOf: (key) => names.get(key) ?? key,
    order: [...names.keys()],
  });
}

type Known = View['parts'][number] | undefined;

function partCost(
  id: string,
  {
    direct,
    donor,
    known,
    currency,
  }: Pick<PartCost, 'direct' | 'donor'> & { readonly known: Known; readonly currency: string },
): PartCost {
  const total = sum([direct.value, ...(donor ? [donor.money] : [])], currency);
  const newPrice = stated(known?.part.newPrice, currency);
  const saved = newPrice && sum([newPrice, negate(total)], currency);
  const name = known?.part.name ?? id;
  return { id, name, state: known?.state, direct, donor, total, newPrice, saved };
}

/** Parts of the day by id; one that was paid for before any of its steps is there too. */
function partsById({ project, parts }: View): ReadonlyMap<string, NonNullable<Known>> {
  const later = project.parts.map(
    (part) => [part.id, { part, state: 'noted', since: undefined }] as const,
  );
  return new Map([...later, ...parts.map((item) => [item.part.id, item] as const)]);
}
