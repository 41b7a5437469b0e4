import type { View } from '../book/types.ts';
import { allocate } from '../money/allocate.ts';
import type { Money } from '../money/money.ts';
import { donorAccount } from './donor.ts';

/** A part of a donor machine, with the value stated for it, if any. */
export interface DonorPart {
  readonly part: string;
  readonly source: string;
  readonly value: Money | undefined;
}

/**
 * What a part bears of the net cost of its donor on the day of a view. For one that was not taken: what it would bear beside
 * those that were. Undefined where nothing is stated to share by.
 */
export function wouldBeShare(view: View, { part, source, value }: DonorPart): Money | undefined {
  const donor = view.project.sources.find(({ id, kind }) => id === source && kind === 'donor');
  if (donor === undefined) return undefined;
  const { shares, lines } = donorAccount(view, donor);
  const own = shares.find((share) => share.part.id === part);
  if (own) return own.money;
  if (value === undefined || value.minor <= 0) return undefined;
  const weights = [value, ...shares.map((share) => share.value)].map(({ minor }) => BigInt(minor));
  return allocate(lines.total.value, weights)[0];
}
