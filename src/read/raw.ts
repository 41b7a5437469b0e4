import type { Place } from './problem.ts';

/**
 * What a file says before anything is understood: every scalar is the text as written, so YAML and CSV mean the same.
 */
export type RawValue = string | readonly RawValue[] | { readonly [key: string]: RawValue };

export type Path = readonly (string | number)[];

/** One record as written, and where each part of it stands. */
export interface RawRecord {
  readonly value: RawValue;
  /** Names of the columns of the table that it is a line of, empty cells included. */
  readonly columns?: readonly string[];
  /** Where the value at a path starts; for a path that is not there, the nearest part around it that is. */
  placeOf(path: Path): Place;
  /** Where the key at the end of a path starts. */
  keyPlaceOf(path: Path): Place;
}

interface Spot {
  readonly line: number;
  readonly column: number;
}

/** Collects places by path while a reader walks a file. */
export class PlaceMap {
  readonly #file: string;
  readonly #values = new Map<string, Spot>();
  readonly #keys = new Map<string, Spot>();

  constructor(file: string) {
    this.#file = file;
  }

  setValue(path: Path, line: number, column: number): void {
    this.#values.set(JSON.stringify(path), { line, column });
  }

  setKey(path: Path, line: number, column: number): void {
    this.#keys.set(JSON.stringify(path), { line, column });
  }

  /** A record whose own paths start below `root`. */
  record(value: RawValue, root: Path): RawRecord {
    return {
      value,
      placeOf: (path) => this.#find(this.#values, [...root, ...path]),
      keyPlaceOf: (path) => this.#find(this.#keys, [...root, ...path]),
    };
  }

  #find(places: Map<string, Spot>, path: Path): Place {
    for (let length = path.length; length >= 0; length--) {
      const key = JSON.stringify(path.slice(0, length));
      const spot = length === path.length ? places.get(key) : this.#values.get(key);
      if (spot) return { file: this.#file, ...spot };
    }
    return { file: this.#file, line: 1, column: 1 };
  }
}
