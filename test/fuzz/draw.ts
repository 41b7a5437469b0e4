import fc from 'fast-check';

/** Numbers that a mutation takes its choices from, one after the other; the same numbers give the same mutation. */
export class Draw {
  readonly #numbers: readonly number[];
  #next = 0;

  constructor(numbers: readonly number[]) {
    this.#numbers = numbers;
  }

  /** A number below `end`. */
  below(end: number): number {
    const number = this.#numbers[this.#next++ % this.#numbers.length] ?? 0;
    return end <= 0 ? 0 : number % end;
  }

  of<Item>(items: readonly Item[]): Item {
    return items[this.below(items.length)] as Item;
  }
}

/** Enough numbers for one mutation. */
export const draws = fc.array(fc.nat(), { minLength: 6, maxLength: 6 });
