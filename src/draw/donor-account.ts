import type { DonorAccount } from '../cost/donor.ts';
import { type Money, showMoney } from '../money/money.ts';
import { say } from '../words/said.ts';
import { type Words, wordsOf } from '../words/words.ts';
import { linearScale } from './scale.ts';
import { across, type Drawing, fluidDrawing, node, type SvgNode } from './svg.ts';

const ROW = 40;
const TOP = 18;
/** From the lettering of a row down to its line. */
const LINE = 10;

interface Step {
  readonly name: string;
  readonly money: Money;
  readonly from: number;
  readonly to: number;
  readonly line: 'wide' | 'planned';
}

/**
 * The account of a donor as steps from nothing to its net cost, the estimate of what is still to sell dashed below:
 *
 *     Bought                      £900.00
 *     ==========================
 *     Sold                       −£245.00
 *              |        =========
 *     Net cost                    £655.00
 *     =================
 */
export function drawDonorAccount(account: DonorAccount, language: string): Drawing {
  const words = wordsOf(language);
  const steps = stepsOf(account, words);
  const ends = steps.flatMap(({ from, to }) => [from, to]);
  const scale = linearScale([Math.min(0, ...ends), Math.max(1, ...ends)], [0.5, 99.5]);
  const height = TOP + steps.length * ROW;
  const zero = { x1: across(scale(0)), x2: across(scale(0)), y1: 0, y2: height - ROW + TOP + LINE };
  const net = showMoney(account.lines.total.value, language);
  const title = words.money.donor.drawingTitle(account.source.name, net);
  return fluidDrawing(height, title, [
    // Where all lies above nothing, the steps start at the edge.
    ...(Math.min(...ends) < 0 ? [node('line', { ...zero, class: 'grid' })] : []),
    ...steps.flatMap((step, index) => drawStep(step, TOP + index * ROW, scale, language)),
  ]);
}

function stepsOf({ lines, forSale }: DonorAccount, words: Words): Step[] {
  const said = words.money.donor;
  let run = 0;
  const steps = lines.groups.map(({ name, figure }): Step => {
    const from = run;
    run += figure.value.minor;
    return { name: say(name, words), money: figure.value, from, to: run, line: 'wide' };
  });
  const net: Step = { name: said.net, money: lines.total.value, from: 0, to: run, line: 'wide' };
  if (forSale.value.minor === 0) return [...steps, net];
  const left: Step = {
    name: said.stillToSellEstimate,
    money: forSale.value,
    from: run,
    to: run - forSale.value.minor,
    line: 'planned',
  };
  return [...steps, net, left];
}

function drawStep(
  { name, money, from, to, line }: Step,
  y: number,
  scale: (value: number) => number,
  language: string,
): SvgNode[] {
  const ends = { x1: across(scale(from)), x2: across(scale(to)), y1: y + LINE, y2: y + LINE };
  const amount = showMoney(money, language);
  const shown = line === 'planned' ? `(${amount})` : amount;
  return [
    node('line', { ...ends, class: line }),
    node('text', { x: '0%', y }, name),
    node('text', { x: '100%', y, 'text-anchor': 'end' }, shown),
  ];
}
