import { type Component, type Spread, spreadOf } from './uncertain.ts';

/**
 * A value whose uncertainty is worked out when somebody asks: a decade of readings makes tens of thousands of values, and pages show the
 * uncertainty of few of them.
 */
export abstract class SpreadLater implements Spread {
  #components: readonly Component[] | undefined;
  #spread: Spread | undefined;

  /** The sources of its uncertainty, called once. */
  protected abstract workOutComponents(): readonly Component[];

  get components(): readonly Component[] {
    this.#components ??= this.workOutComponents();
    return this.#components;
  }

  get u(): number | undefined {
    return this.#spreading.u;
  }

  get nu(): number {
    return this.#spreading.nu;
  }

  get U(): number | undefined {
    return this.#spreading.U;
  }

  get #spreading(): Spread {
    this.#spread ??= spreadOf(this.components);
    return this.#spread;
  }
}
