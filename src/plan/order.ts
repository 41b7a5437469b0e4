/** What an order needs to know of an item: who it is and what comes before it. */
export interface Ordered {
  readonly id: string;
  readonly after: readonly { readonly id: string }[];
}

/** Every item after what it waits for, or the ids in a ring when they wait for each other. */
export type Order<Item> =
  | { readonly kind: 'order'; readonly items: readonly Item[] }
  | { readonly kind: 'loop'; readonly ids: readonly string[] };

/**
 * Puts items in an order in which each stands after its predecessors, in time that grows with items and links (Kahn, 1962).
 * A link to an id that is not in the list binds nothing.
 */
export function inOrder<Item extends Ordered>(items: readonly Item[]): Order<Item> {
  const followers = new Map<string, Item[]>(items.map(({ id }) => [id, []]));
  const open = new Map<string, number>();
  for (const item of items) {
    const known = item.after.filter(({ id }) => followers.has(id));
    open.set(item.id, known.length);
    for (const { id } of known) followers.get(id)?.push(item);
  }

  const ready = items.filter(({ id }) => open.get(id) === 0);
  // The list grows while it is walked.
  for (const { id } of ready)
    for (const follower of followers.get(id) ?? []) {
      const left = (open.get(follower.id) ?? 0) - 1;
      open.set(follower.id, left);
      if (left === 0) ready.push(follower);
    }
  if (ready.length === items.length) return { kind: 'order', items: ready };

  return { kind: 'loop', ids: ringIn(items.filter(({ id }) => (open.get(id) ?? 0) > 0)) };
}

/** Each of the blocked items waits for another of them, so walking back must come round. */
function ringIn(blocked: readonly Ordered[]): string[] {
  const byId = new Map(blocked.map((item) => [item.id, item]));
  const met = new Map<string, number>();
  const trail: string[] = [];
  let at = blocked[0];
  while (at !== undefined && !met.has(at.id)) {
    met.set(at.id, trail.length);
    trail.push(at.id);
    at = byId.get(at.after.find(({ id }) => byId.has(id))?.id ?? '');
  }
  return trail.slice(met.get(at?.id ?? ''));
}
