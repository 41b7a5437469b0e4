/** How much may be worked on at once. */
export interface Bounds {
  /** Items at once. */
  readonly items: number;
  /** Sum of the weights of the items that are worked on; a heavier one is worked on alone. */
  readonly weight: number;
}

/** Works through items in their order, several at once, so that neither time nor memory depends on how many there are. */
export async function eachOf<Item>(
  items: readonly Item[],
  { items: most, weight: capacity }: Bounds,
  weightOf: (item: Item) => number,
  work: (item: Item) => Promise<void>,
): Promise<void> {
  const running = new Set<Promise<void>>();
  let load = 0;
  for (const item of items) {
    const weight = weightOf(item);
    while (running.size > 0 && (running.size >= most || load + weight > capacity))
      await Promise.race(running);
    load += weight;
    const one = work(item).finally(() => {
      load -= weight;
      running.delete(one);
    });
    running.add(one);
  }
  await Promise.all(running);
}
