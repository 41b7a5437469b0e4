import type { View } from '../book/types.ts';
import { showMoney } from '../money/money.ts';
import { type Day, daysBetween, showShortDay } from '../time/day.ts';
import { wordsOf } from '../words/words.ts';
import { linearScale, roundTicks } from './scale.ts';
import { across, type Drawing, fluidDrawing, node } from './svg.ts';
import { showWhole } from './whole-money.ts';

const HEIGHT = 220;
const TOP = 20;
const BOTTOM = 188;
/** The line starts here; the amounts lie on their lines, left of it. */
const LEFT = 17;

/** Money spent so far, day by day, as a wide stepped line; it starts at zero, so nothing is cut. */
export function drawSpending(view: View, language: string): Drawing | undefined {
  const rows = view.costs.filter(({ inTotals }) => inTotals);
  const [first] = rows;
  if (first === undefined) return undefined;
  const from = view.project.firstDay;
  const days = Math.max(1, daysBetween(from, view.day));
  const { currency } = view.project;

  const sums: { day: Day; minor: number }[] = [];
  let minor = 0;
  for (const row of rows) {
    minor += row.counted.minor;
    if (sums.at(-1)?.day === row.date) sums.pop();
    sums.push({ day: row.date, minor });
  }
  const most = Math.max(...sums.map((sum) => sum.minor), 1);
  const down = linearScale([0, most * 1.06], [BOTTOM, TOP]);
  const place = (day: Day) => LEFT + (daysBetween(from, day) / days) * (100 - LEFT);

  const steps = sums.flatMap((sum, index) => {
    const before = sums[index - 1]?.minor ?? 0;
    const until = sums[index + 1]?.day ?? view.day;
    const x = across(place(sum.day));
    return [
      node('line', { x1: x, x2: x, y1: down(before), y2: down(sum.minor), class: 'wide' }),
      node('line', {
        x1: x,
        x2: across(place(until)),
        y1: down(sum.minor),
        y2: down(sum.minor),
        class: 'wide',
      }),
    ];
  });
  const ticks = roundTicks([0, most], 4);
  const scale = ticks.flatMap((tick) => [
    node('line', { x1: '0%', x2: '100%', y1: down(tick), y2: down(tick), class: 'grid' }),
    node(
      'text',
      { x: '0%', y: down(tick) - 4, class: 'small' },
      showWhole({ minor: tick, currency }, language),
    ),
  ]);
  const dates = [
    node(
      'text',
      { x: across(LEFT), y: HEIGHT - 10, 'text-anchor': 'middle', class: 'small' },
      showShortDay(from, language),
    ),
    // On its first day a ledger has one date.
    ...(from === view.day
      ? []
      : [
          node(
            'text',
            { x: '100%', y: HEIGHT - 10, 'text-anchor': 'end', class: 'small' },
            showShortDay(view.day, language),
          ),
        ]),
  ];
  const title = wordsOf(language).money.costs.spendingTitle(
    showShortDay(from, language),
    showShortDay(view.day, language),
    showMoney({ minor, currency }, language),
  );
  return fluidDrawing(HEIGHT, title, [...scale, ...steps, ...dates]);
}
