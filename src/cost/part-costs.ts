import type { Figure } from '../book/figure.ts';
import type { View } from '../book/types.ts';
import { type Money, negate, sum } from '../money/money.ts';
import type { PartState } from '../parts/state.ts';
import { rowsByBearer } from './bearer.ts';
import type { CostRow } from './cost-row.ts';
import { shareOut, sumCosts } from './costs.ts';
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

/** What every part cost, and all else that was spent: the four add up to the total. */
export interface PartCosts {
  readonly parts: readonly PartCost[];
  /** Net cost of donors of which no part has a stated value. */
  readonly unshared: readonly DonorAccount[];
  /** The machine that is built: bought whole, less what was sold of it. */
  readonly base: Figure<Money, CostRow>;
  /** Rows that name no part and no machine. */
  readonly rest: Figure<Money, CostRow>;
  readonly inParts: Money;
  readonly total: Money;
}

/** What each part had cost on the day of a view. */
export function partCosts(view: View): PartCosts {
  const { currency, sources } = view.project;
  const rows = rowsByBearer(view);
  const accounts = donorAccounts(view);
  const own = Map.groupBy(
    shareOut(rows.get('parts') ?? [], ({ parts }) => parts),
    ({ key }) => key,
  );
  const donors = new Set(sources.filter(({ kind }) => kind === 'donor').map(({ id }) => id));
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
  return {
    parts,
    unshared: accounts.filter(({ shares: bearing }) => bearing.length === 0),
    base: sumCosts(
      (rows.get('machine') ?? []).filter(({ source }) => !donors.has(source ?? '')),
      currency,
    ),
    rest: sumCosts(rows.get('rest') ?? [], currency),
    inParts: sum(
      parts.map(({ total }) => total),
      currency,
    ),
    total: view.costsByCategory.total.value,
  };
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
