/** How many requests at once, and how many a second after that. */
export interface Pace {
  readonly burst: number;
  readonly perSecond: number;
}

/** Most addresses that are remembered at a time. */
const MOST_KEYS = 2000;

/** Says for each key whether one more request is too much: a bucket that fills at a steady pace. */
export class Rate {
  readonly #pace: Pace;
  readonly #buckets = new Map<string, { left: number; at: number }>();

  constructor(pace: Pace) {
    this.#pace = pace;
  }

  /** Counts a request; false when it is one too many. */
  take(key: string, nowMs: number): boolean {
    const bucket = this.#filled(key, nowMs);
    if (bucket.left < 1) return false;
    bucket.left--;
    return true;
  }

  /** Whether another request would be taken. */
  hasLeft(key: string, nowMs: number): boolean {
    return this.#filled(key, nowMs).left >= 1;
  }

  #filled(key: string, nowMs: number) {
    const { burst, perSecond } = this.#pace;
    const before = this.#buckets.get(key);
    const gained = before ? ((nowMs - before.at) / 1000) * perSecond : burst;
    const bucket = { left: Math.min(burst, (before?.left ?? 0) + gained), at: nowMs };
    // Taken out and put in again, the oldest stands first and is forgotten first.
    this.#buckets.delete(key);
    this.#buckets.set(key, bucket);
    const oldest = this.#buckets.keys().next().value;
    if (this.#buckets.size > MOST_KEYS && oldest !== undefined) this.#buckets.delete(oldest);
    return bucket;
  }
}
