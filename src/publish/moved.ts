import type { Site } from '../model/kinds.ts';

/** An address that was published once and leads somewhere else now; both inside the site. */
export interface Moved {
  readonly from: string;
  readonly to: string;
}

/** Where an address is now, through everything that moved in between; undefined where moves go in a circle. */
export function addressNow(from: string, moved: readonly Moved[]): string | undefined {
  const next = new Map(moved.map((move) => [move.from, move.to]));
  const seen = new Set<string>();
  let address = from;
  while (next.has(address)) {
    if (seen.has(address)) return undefined;
    seen.add(address);
    address = next.get(address) ?? '';
  }
  return address;
}

/** The first address that what is at an address now was published at. */
export function firstAddressOf(now: string, moved: readonly Moved[]): string {
  const seen = new Set<string>();
  let address = now;
  for (;;) {
    const before = moved.find(({ to }) => to === address);
    if (before === undefined || seen.has(before.from)) return address;
    seen.add(before.from);
    address = before.from;
  }
}

/** Pages that only lead on: each old address with the newest. A file that is no page can't lead anywhere. */
export function redirects({ moved = [] }: Pick<Site, 'moved'>): readonly Moved[] {
  return moved.flatMap(({ from }) => {
    const to = addressNow(from, moved);
    return from.endsWith('/') && to !== undefined ? [{ from, to }] : [];
  });
}
