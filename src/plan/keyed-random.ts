/**
 * A seed of its own for everything that has a name. Two forecasts that differ in one thing then draw the same numbers for all
 * else, so what differs in the result comes from that thing (FNV-1a over the name, then a mixing step).
 */
export function seedFor(seed: number, name: string): number {
  let hash = 0x811c9dc5 ^ seed;
  for (let i = 0; i < name.length; i++) hash = Math.imul(hash ^ name.charCodeAt(i), 0x01000193);
  return mix(hash);
}

/** A number evenly spread in [0, 1) for a place in a table, the same however many others were asked for before. */
export function uniformAt(seed: number, row: number, column: number): number {
  return mix(mix(seed ^ Math.imul(row, 0x9e3779b1)) ^ Math.imul(column, 0x85ebca77)) * 2 ** -32;
}

/** The finaliser of MurmurHash3 (Appleby, 2011): each bit that goes in turns about half of those that come out. */
function mix(bits: number): number {
  let z = bits;
  z = Math.imul(z ^ (z >>> 16), 0x85ebca6b);
  z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35);
  return (z ^ (z >>> 16)) >>> 0;
}
