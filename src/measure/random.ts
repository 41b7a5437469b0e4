/** A stream of random numbers that is the same for the same seed on every machine. */
export interface RandomStream {
  /** Evenly spread in (0, 1), neither end included. */
  uniform(): number;
  /** Standard normal. */
  normal(): number;
  /** χ² with ν degrees of freedom (a whole number). */
  chiSquare(nu: number): number;
}

const BLOCK = 4096;

/** xoshiro128** by Blackman and Vigna (2018), seeded by splitmix32, and Marsaglia and Tsang's ziggurat (2000) for normal numbers. */
export function randomStream(seed: number): RandomStream {
  const state = new Int32Array(4);
  let mixed = seed >>> 0;
  for (let i = 0; i < 4; i++) {
    mixed = (mixed + 0x9e3779b9) >>> 0;
    let z = mixed;
    z = Math.imul(z ^ (z >>> 16), 0x85ebca6b);
    z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35);
    state[i] = z ^ (z >>> 16);
  }
  // Words are made by the block: in a tight loop the state stays in registers, one by one it would go through memory.
  const words = new Uint32Array(BLOCK);
  let next = BLOCK;

  function refill(): void {
    let [a, b, c, d] = state as unknown as [number, number, number, number];
    for (let i = 0; i < BLOCK; i++) {
      const scrambled = Math.imul(b, 5);
      words[i] = Math.imul((scrambled << 7) | (scrambled >>> 25), 9);
      const shifted = b << 9;
      c ^= a;
      d ^= b;
      b ^= c;
      a ^= d;
      c ^= shifted;
      d = (d << 11) | (d >>> 21);
    }
    state.set([a, b, c, d]);
    next = 0;
  }

  function bits(): number {
    if (next === BLOCK) refill();
    return words[next++] as number;
  }

  const uniform = () => (bits() + 0.5) * 2 ** -32;

  function normal(): number {
    for (;;) {
      const word = bits();
      const layer = word & 127;
      // 24 bits of the word and its sign make the abscissa; 7 bits chose the layer.
      const signed = (word >> 7) * 2 ** -24;
      const x = signed * (EDGES[layer] as number);
      if (Math.abs(x) < (EDGES[layer + 1] as number)) return x;
      if (layer === 0) return tail(signed < 0);
      const top = HEIGHTS[layer + 1] as number;
      const bottom = HEIGHTS[layer] as number;
      if (bottom + uniform() * (top - bottom) < Math.exp((-x * x) / 2)) return x;
    }
  }

  /** Beyond the last layer, Marsaglia's method for the tail of the normal distribution. */
  function tail(negative: boolean): number {
    for (;;) {
      const x = -Math.log(uniform()) / TAIL;
      if (-2 * Math.log(uniform()) > x * x) return negative ? -(TAIL + x) : TAIL + x;
    }
  }

  /** χ² with ν degrees of freedom: pairs of normal squares are −2·ln of a uniform number (Box and Muller). */
  function chiSquare(nu: number): number {
    let product = 1;
    let logs = 0;
    for (let pair = nu >> 1; pair > 0; pair--) {
      product *= uniform();
      // Sixteen uniform numbers are well above the smallest double; then a logarithm is due.
      if ((pair & 15) === 0) {
        logs += Math.log(product);
        product = 1;
      }
    }
    const pairs = -2 * (logs + Math.log(product));
    return nu & 1 ? pairs + normal() ** 2 : pairs;
  }

  return { uniform, normal, chiSquare };
}

// 128 layers of equal area v under exp(−x²/2); r and v from Marsaglia and Tsang (2000), table for n = 128.
const TAIL = 3.442619855899;
const AREA = 9.91256303526217e-3;
const EDGES = new Float64Array(130);
const HEIGHTS = new Float64Array(130);
EDGES[0] = AREA / Math.exp((-TAIL * TAIL) / 2);
EDGES[1] = TAIL;
for (let i = 2; i < 128; i++) {
  const below = EDGES[i - 1] as number;
  EDGES[i] = Math.sqrt(-2 * Math.log(AREA / below + Math.exp((-below * below) / 2)));
}
EDGES[128] = 0;
for (let i = 1; i <= 128; i++) HEIGHTS[i] = Math.exp(-((EDGES[i] as number) ** 2) / 2);
