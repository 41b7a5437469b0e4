import type { Component } from './uncertain.ts';

/** A value of the model that is drawn: its mean and the sources it is moved by. */
export interface DrawnInput {
  readonly value: number;
  readonly components: readonly Pick<Component, 'key' | 'group' | 'u' | 'nu' | 'shape'>[];
}
