/** Pairs of numbers, as many as come: memory is taken by doubling, since a million small steps would keep the collector busy. */
export class PairList {
  #a = new Float64Array(1024);
  #b = new Float64Array(1024);
  #length = 0;

  get length(): number {
    return this.#length;
  }

  get a(): Float64Array {
    return this.#a.subarray(0, this.#length);
  }

  get b(): Float64Array {
    return this.#b.subarray(0, this.#length);
  }

  push(a: number, b: number): void {
    if (this.#length === this.#a.length) {
      this.#a = doubled(this.#a);
      this.#b = doubled(this.#b);
    }
    this.#a[this.#length] = a;
    this.#b[this.#length] = b;
    this.#length++;
  }
}

function doubled(row: Float64Array): Float64Array<ArrayBuffer> {
  const longer = new Float64Array(2 * row.length);
  longer.set(row);
  return longer;
}
