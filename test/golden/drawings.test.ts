import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { budgetCurve } from '../../src/cost/budget-curve.ts';
import { budgetFigures } from '../../src/cost/budget-figures.ts';
import { donorAccounts } from '../../src/cost/donor.ts';
import { drawBudgetCurve } from '../../src/draw/budget-curve.ts';
import { drawCallouts } from '../../src/draw/callouts.ts';
import { drawChain } from '../../src/draw/chain.ts';
import { drawChange } from '../../src/draw/change.ts';
import { drawDonorAccount } from '../../src/draw/donor-account.ts';
import { drawHistory } from '../../src/draw/history.ts';
import { drawOrigins } from '../../src/draw/origins.ts';
import { drawRemaining } from '../../src/draw/remaining.ts';
import { drawShare } from '../../src/draw/share.ts';
import { drawSpending } from '../../src/draw/spending.ts';
import { type SvgNode, writeSvg } from '../../src/draw/svg.ts';
import type { SpecFigures } from '../../src/measure/spec-figures.ts';
import { chainOf } from '../../src/parts/chain.ts';
import { ownGrades } from '../../src/parts/grade-scale.ts';
import { originLines } from '../../src/parts/origin-lines.ts';
import { originsOn } from '../../src/parts/origins.ts';
import { wordsOf } from '../../src/words/words.ts';
import { workshop } from '../parts/workshop.ts';
import { budgetedPress } from './budgeted-press.ts';
import { calledOut } from './called-out.ts';
import { drillPress } from './drill-press.ts';
import { sparePress } from './spare-press.ts';

const { now } = drillPress;
const words = wordsOf('en-GB');
const reader = { language: 'en-GB', otherUnits: 'imperial' } as const;

function specOf(id: string): SpecFigures {
  const figures = now.spec(id);
  if (figures === undefined) throw new Error(`the fixed project has no spec ${id}`);
  return figures;
}

function donorDrawing() {
  const [account] = donorAccounts(sparePress.now);
  return account && drawDonorAccount(account, 'en-GB');
}
const left = (value: number, U: number | undefined) =>
  ({ kind: 'worked', unit: '%', decimals: 0, value, U }) as const;

function drawnChain(part: string): SvgNode | undefined {
  const chain = chainOf(workshop.now, part);
  return chain && drawChain(chain, 'en-GB')?.root;
}

const fileOf = (name: string) => new URL(`files/${name}.svg`, import.meta.url);

/** A drawing as it is kept: one piece to a line, so that a change shows as the lines it touches. */
const written = (root: SvgNode) => `${writeSvg(root).replaceAll('><', '>\n<')}\n`;

/** Where a drawing differs from its file first, for a reader; undefined when they are the same to the byte. */
function differenceFrom(name: string, root: SvgNode): string | undefined {
  if (!existsSync(fileOf(name)))
    return `${name}.svg is not there; set UPDATE_GOLDEN=1, and look at it`;
  const golden = readFileSync(fileOf(name), 'utf8');
  if (golden === written(root)) return undefined;

  const [before, after] = [golden.split('\n'), written(root).split('\n')];
  const line = after.findIndex((text, index) => text !== before[index]);
  return [
    `${name}.svg differs from line ${line + 1} on; if that is meant, set UPDATE_GOLDEN=1, and look at it:`,
    `- ${before[line] ?? '(end)'}`,
    `+ ${after[line] ?? '(end)'}`,
  ].join('\n');
}

describe('a drawing is the same to the byte as the one that was looked at:', () => {
  const drawings: Readonly<Record<string, SvgNode | undefined>> = {
    change: drawChange(specOf('spindle-load'), reader)?.root,
    'change-without-uncertainty': drawChange(specOf('run-out'), reader)?.root,
    history: drawHistory(specOf('spindle-load'), 'en-GB')?.root,
    spending: drawSpending(now, 'en-GB')?.root,
    'donor-account': donorDrawing()?.root,
    'budget-curve': drawBudgetCurve(
      budgetCurve(budgetedPress.now, budgetFigures(budgetedPress.now)),
      'GBP',
      'en-GB',
    ).root,
    share: drawShare(2, 3),
    remaining: drawRemaining(
      [
        { label: 'as found', remaining: left(65.4, 2), line: 'before' },
        { label: 'now', remaining: left(41.8, undefined), line: 'wide' },
      ],
      ownGrades,
      reader,
    )?.root,
    'part-chain': drawnChain('table'),
    'part-chain-open': drawnChain('drum'),
    origins: drawOrigins(originLines(originsOn(workshop.now), words), words).root,
    callouts: drawCallouts(calledOut, { width: 1920, height: 1440 }, wordsOf('en')).root,
  };

  test.each(Object.entries(drawings))('%s', (name, root) => {
    if (root === undefined) throw new Error('nothing was drawn');
    if (process.env.UPDATE_GOLDEN === '1') writeFileSync(fileOf(name), written(root));
    expect(differenceFrom(name, root)).toBeUndefined();
  });
});

test('a drawing that has changed is told by its first line that did', () => {
  const root = drawShare(1, 3);
  expect(differenceFrom('share', root)?.split('\n').slice(1)).toEqual([
    '- <line x1="0%" x2="66.667%" y1="7" y2="7" class="wide"/>',
    '+ <line x1="0%" x2="33.333%" y1="7" y2="7" class="wide"/>',
  ]);
});

test('where there is nothing to draw, nothing is drawn', () => {
  const empty = drillPress.asOf(drillPress.firstDay);
  const [unread] = empty.specs;
  expect(drawRemaining([], ownGrades, reader)).toBeUndefined();
  expect(unread && drawHistory(unread, 'en-GB')).toBeUndefined();
  expect(unread && drawChange(unread, reader)).toBeUndefined();
});
