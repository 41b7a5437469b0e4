import type { Breakdown, Figure } from '../book/figure.ts';
import type { CostRow } from '../cost/cost-row.ts';
import type { Money } from '../money/money.ts';
import { say } from '../words/said.ts';
import type { Words } from '../words/words.ts';
import type { OriginRow, Origins } from './origins.ts';

/** A figure and its share of the whole, from 0 to 1; below 0 where credits outweigh. */
export interface Shared<Of> {
  readonly figure: Of;
  readonly share: number;
}

/** All that came from one source. */
export interface OriginLine {
  readonly key: string;
  readonly name: string;
  readonly pieces: Shared<Figure<number, OriginRow>> | undefined;
  readonly mass: Shared<Figure<number, OriginRow>> | undefined;
  readonly cost: Shared<Figure<Money, CostRow>> | undefined;
}

/** The breakdowns side by side, one line a source; money that is tied to none stands last. */
export function originLines({ pieces, mass, cost }: Origins, words: Words): readonly OriginLine[] {
  const names = new Map(
    [...pieces.groups, ...mass.groups, ...cost.groups].map(({ key, name }) => [key, name]),
  );
  const sizeOf = (value: number) => value;
  const lines = [...names].map(([key, name]) => ({
    key,
    name: key === 'none' ? words.parts.sources.none : say(name, words),
    pieces: sharedOf(pieces, key, sizeOf),
    mass: sharedOf(mass, key, sizeOf),
    cost: sharedOf(cost, key, ({ minor }) => minor),
  }));
  return [
    ...lines.filter(({ key }) => key !== 'none'),
    ...lines.filter(({ key }) => key === 'none'),
  ];
}

function sharedOf<Value, Row extends OriginRow | CostRow>(
  { groups, total }: Breakdown<Value, Row>,
  key: string,
  sizeOf: (value: Value) => number,
): Shared<Figure<Value, Row>> | undefined {
  const figure = groups.find((group) => group.key === key)?.figure;
  const whole = sizeOf(total.value);
  return figure && { figure, share: whole > 0 ? sizeOf(figure.value) / whole : 0 };
}
