import type { Breakdown, Figure } from '../book/figure.ts';
import type { View } from '../book/types.ts';
import { sumHours, type WorkedRow } from '../hours/hours.ts';
import type { Part, Source } from '../model/kinds.ts';
import type { Money } from '../money/money.ts';
import type { Minutes } from '../time/duration.ts';
import { rowsByBearer } from './bearer.ts';
import type { CostRow } from './cost-row.ts';
import { costsBy } from './costs.ts';
import { type DonorShare, shareNet } from './donor-shares.ts';
import { type ForSaleRow, forSale } from './for-sale.ts';
import { type LabourFigure, labourOf } from './labour.ts';
import { type WeighedScrap, weighScrap } from './scrap.ts';

/** What a machine bought to be taken apart has cost up to a day. */
export interface DonorAccount {
  readonly source: Source;
  /** Bought, carriage, other costs, sold, scrap, money back; the total is the net cost, below nothing when it paid for itself. */
  readonly lines: Breakdown<Money, CostRow>;
  readonly scrap: WeighedScrap | undefined;
  readonly hours: Figure<Minutes, WorkedRow>;
  /** The builder's own hours at the project's rate; never in the money. */
  readonly labour: LabourFigure | undefined;
  /** What is asked for what is left; an estimate, never counted. */
  readonly forSale: Figure<Money, ForSaleRow>;
  /** The net cost over the parts taken, by stated value; none when no part has one. */
  readonly shares: readonly DonorShare[];
  /** Parts taken that have no stated value. */
  readonly withoutValue: readonly Part[];
}

const LINES = ['bought', 'carriage', 'other', 'sold', 'scrap', 'back'] as const;

type Line = (typeof LINES)[number];

/** The account of a donor machine on the day of a view. */
export function donorAccount(view: View, source: Source): DonorAccount {
  const { currency, info } = view.project;
  const rows = (rowsByBearer(view).get('machine') ?? []).filter((row) => row.source === source.id);
  const lines = costsBy(rows, currency, {
    keyOf: lineOf,
    nameOf:
      (key) =>
      ({ money }) =>
        money.donor.lines[key as Line],
    order: LINES,
  });
  const hours = view.hours.filter((row) => row.source === source.id);
  const taken = view.parts
    .filter(({ part, state }) => part.source === source.id && isTaken(state))
    .map(({ part }) => part)
    .filter((part) => !isOffered(part, view));
  return {
    source,
    lines,
    scrap: weighScrap(rows.filter(({ kind }) => kind === 'scrap')),
    hours: sumHours(hours),
    labour: labourOf(hours, info, currency),
    forSale: forSale(view, source.id),
    ...shareNet(taken, lines.total.value),
  };
}

/** The accounts of all donor machines of a project that had been heard of by the day. */
export function donorAccounts(view: View): readonly DonorAccount[] {
  return view.project.sources
    .filter(({ kind }) => kind === 'donor')
    .map((source) => donorAccount(view, source));
}

function lineOf({ kind, category }: CostRow): Line {
  if (kind === 'sale') return 'sold';
  if (kind === 'scrap') return 'scrap';
  if (kind === 'refund' || kind === 'deposit-back') return 'back';
  if (category === 'vehicle') return 'bought';
  return category === 'transport' ? 'carriage' : 'other';
}

function isTaken(state: string): boolean {
  return state === 'in-hand' || state === 'fitted';
}

/** What is offered for sale bears nothing: what it fetches comes off the account once it is sold. */
function isOffered({ forSale: since, fitted }: Part, { day }: View): boolean {
  const isFitted = fitted !== undefined && fitted <= day;
  return since !== undefined && since <= day && !isFitted;
}
