import { type DrawBlock, TURNS } from './draw-blocks.ts';
import { BLOCK } from './even-draws.ts';
import { PairList } from './pair-list.ts';
import { upTo, valueAt } from './ranked.ts';

/** An end of the interval as the draws give it. */
export interface DrawnEnd {
  readonly at: number;
  /** Standard error. */
  readonly error: number;
  /** Whether the error is at most what was asked for. */
  readonly near: boolean;
  /** How many draws it will take, as far as these tell. */
  readonly needed: number;
}

/** What is asked of an end. */
export interface EndAsked {
  /** Share of draws beyond the end. */
  readonly p: number;
  /** How far from the middle the linear part has that share beyond; undefined where there is none. */
  readonly cover: number | undefined;
  /** Number of independent draws it is to be as good as. */
  readonly asGoodAs: number;
}

/** More than is beyond an end, by far more than chance moves a first block of draws. */
const KEPT = 0.055;

/**
 * The draws below one end, kept with the linear part of each: how many lie below the end of the linear part is compared with how many
 * should, and the end of the result is put where as many of its draws lie below (a control variate for a quantile).
 * The upper end is the lower one of everything with its sign turned.
 */
export class TailDraws {
  readonly #sign: 1 | -1;
  readonly #asked: EndAsked;
  /** Where the linear part has its end; nothing lies below it where there is none. */
  readonly #exact: number;
  readonly #cut: { y: number; linear: number };
  readonly #kept = new PairList();
  /** Where in the list each block begins. */
  readonly #begins: number[] = [];

  /** `first` is the result of a first block, sorted. */
  constructor(sign: 1 | -1, first: Float64Array, asked: EndAsked) {
    this.#sign = sign;
    this.#asked = asked;
    this.#exact = asked.cover === undefined ? Number.NEGATIVE_INFINITY : -asked.cover;
    const inwards = Math.ceil(KEPT * first.length);
    const at = first[sign > 0 ? inwards : first.length - 1 - inwards] as number;
    this.#cut = { y: sign * at, linear: 0.95 * this.#exact };
  }

  add({ y, linear }: DrawBlock): void {
    const sign = this.#sign;
    const kept = this.#kept;
    const { y: yCut, linear: linearCut } = this.#cut;
    this.#begins.push(kept.length);
    for (let i = 0; i < y.length; i++) {
      const one = sign * (y[i] as number);
      const other = sign * (linear[i] as number);
      if (one <= yCut || other < linearCut) kept.push(one, other);
    }
  }

  end(): DrawnEnd {
    const { p, cover, asGoodAs } = this.#asked;
    const draws = this.#begins.length * BLOCK;
    const below = upTo(this.#cut.y, this.#kept.a).sort();
    const plain = { rank: p * draws, at: valueAt(below, p * draws - 0.5) };
    const steered = this.#steered(below);
    const own = this.#variance(plain.at, Number.NEGATIVE_INFINITY);
    const apart = cover === undefined ? own : this.#variance(steered.at, this.#exact);
    const best = apart < own ? steered : plain;
    const least = Math.min(own, apart);
    // A wider window than the error's own tells how close the draws lie, since a few of them would tell it badly.
    const spread = Math.sqrt(least);
    const window = Math.max(spread, best.rank / 4);
    const [from, to] = [valueAt(below, best.rank - window), valueAt(below, best.rank + window)];
    const wanted = (p * (1 - p)) / asGoodAs;
    return {
      at: this.#sign * best.at,
      error: ((to - from) / 2) * (spread / window),
      near: least / draws ** 2 <= wanted,
      needed: least / draws / wanted,
    };
  }

  /** The end where as many draws of the result lie below as of the linear part below its exact end; between two draws it goes along. */
  #steered(below: Float64Array): { rank: number; at: number } {
    const exact = this.#exact;
    let [rank, under, over] = [0, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
    const { b } = this.#kept;
    for (let i = 0; i < b.length; i++) {
      const linear = b[i] as number;
      if (linear >= exact) over = Math.min(over, linear);
      else {
        rank++;
        under = Math.max(under, linear);
      }
    }
    const gap = over - under;
    const part = gap > 0 && Number.isFinite(gap) ? (exact - under) / gap : 0.5;
    return { rank, at: valueAt(below, rank - 1 + part) };
  }

  /** Variance of the number of draws below the end, less that of the linear part below its own. */
  #variance(at: number, exact: number): number {
    const blocks = this.#begins.length;
    const { a, b } = this.#kept;
    let [squares, sum, differing] = [0, 0, 0];
    for (let block = 0; block < blocks; block++) {
      let count = 0;
      const to = this.#begins[block + 1] ?? a.length;
      for (let i = this.#begins[block] as number; i < to; i++) {
        const apart = Number((a[i] as number) <= at) - Number((b[i] as number) < exact);
        count += apart;
        differing += apart * apart;
      }
      sum += count;
      squares += count * count;
    }
    // Independent draws would give the first; even rows give less, which shows between blocks once there are enough of them.
    const independent = differing * (1 - differing / (blocks * BLOCK));
    const between = (blocks / (blocks - 1)) * (squares - sum ** 2 / blocks);
    // Blocks of the same rows can't show where the end falls in a slice: by half a draw each, all to one side.
    const slices = Math.ceil(blocks / TURNS) * (Math.min(blocks, TURNS) / 2) ** 2;
    const chance = blocks >= TURNS ? Math.min(independent, between) : independent;
    return chance + Math.min(slices, independent + 1);
  }
}
