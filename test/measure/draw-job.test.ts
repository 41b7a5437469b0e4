import { describe, expect, test } from 'vitest';
import {
  crossCheckKey,
  type DrawJob,
  drawJob,
  intervalToShow,
  runDrawJob,
} from '../../src/measure/cross-check.ts';
import { decimalsFor } from '../../src/measure/uncertainty.ts';
import { type MeasuredLists, measuredProject, workedIn } from './measured-project.ts';

/** A gap over the mean of two lengths, which is worked out itself and goes into two of the steps. */
const lists: MeasuredLists = {
  specs: {
    a: {},
    b: {},
    mean: { formula: '(a + b)/2', inputs: { a: 'a', b: 'b' } },
    twice: { formula: '2*m', inputs: { m: 'mean' } },
    gap: {
      formula: 't + 3*m - b - 2*c',
      inputs: { t: 'twice', m: 'mean', b: 'b', c: '4 ± 0.2 mm' },
    },
    share: { formula: 'm/b', quantity: 'ratio', unit: '1', inputs: { m: 'mean', b: 'b' } },
  },
  readings: [
    { spec: 'a', values: '8', instrument: 'caliper' },
    { spec: 'b', values: '5', instrument: 'caliper' },
  ],
  instruments: [{ id: 'caliper', 'certificate-u': '0.2 mm' }],
};
const worked = (id: string) => workedIn(measuredProject(lists), id);
const rough = (values: readonly number[]) => values.map((one) => expect.closeTo(one, 12));

describe('what is drawn for a worked-out value', () => {
  test('is what was read, each once, and the formulas over it in order', () => {
    const { leaves, steps } = drawJob(worked('gap'));
    expect(leaves.map(({ value }) => value)).toEqual(rough([0.008, 0.005, 0.004]));
    expect(steps).toEqual([
      { text: '(a + b)/2', names: ['a', 'b'], from: [0, 1] },
      { text: '2*m', names: ['m'], from: [-1] },
      { text: 't + 3*m - b - 2*c', names: ['t', 'm', 'b', 'c'], from: [-2, -1, 1, 2] },
    ]);
  });

  test('knows the slope for each of them, along every way it goes in by', () => {
    // 2·(a + b)/2 + 3·(a + b)/2 − b − 2·c
    expect(drawJob(worked('gap')).slopes).toEqual(rough([2.5, 1.5, -2]));
    // (a + b)/(2·b): 1/(2·b), and −a/(2·b²), in metres.
    expect(drawJob(worked('share')).slopes).toEqual(rough([100, -160]));
  });

  test('is drawn by the first digits of its key, and by nothing else of it', () => {
    const job = drawJob(worked('share'));
    const drawnBy = (key: string) => runDrawJob({ ...job, key });
    const at = drawnBy('0000000c11111111');
    expect(drawnBy('0000000c99999999')).toEqual(at);
    expect(drawnBy('0000000d11111111').low).not.toBe(at.low);
    expect(drawnBy('1000000c11111111').low).not.toBe(at.low);
  });

  test('is refused where a formula is none: the check would have named it', () => {
    const job = drawJob(worked('share'));
    const steps = [{ text: 'a +', names: ['a'], from: [0] }];
    expect(() => runDrawJob({ ...job, steps })).toThrow(/^this is our bug: a \+: ./);
  });
});

describe('the two intervals', () => {
  const job = drawJob(worked('gap'));
  const drawn = runDrawJob(job);

  /** Puts the ends of the GUM's interval so far above the drawn ones. */
  function apart(low: number, high: number): DrawJob {
    const [from, to] = [drawn.low + low, drawn.high + high];
    const spread = { ...job.spread, U: (to - from) / 2 };
    return { ...job, value: (from + to) / 2, spread };
  }

  test('agree as long as neither end is off by more than half a digit of u and what chance explains', () => {
    const { u } = job.spread;
    const half = 0.5 * 10 ** -decimalsFor(u as number);
    const [low, high] = [half + 3 * drawn.lowError, half + 3 * drawn.highError];
    const agrees = (...by: readonly [number, number]) => runDrawJob(apart(...by)).agrees;
    expect(drawn.lowError).toBeGreaterThan(0.01 * half);
    for (const sign of [-1, 1]) {
      expect(agrees(0.999 * sign * low, 0)).toBe(true);
      expect(agrees(0, 0.999 * sign * high)).toBe(true);
      expect(agrees(1.001 * sign * low, 0)).toBe(false);
      expect(agrees(0, 1.001 * sign * high)).toBe(false);
    }
  });

  test('agree where one of them is unknown', () => {
    for (const unknown of ['u', 'U'] as const) {
      const spread = { ...job.spread, [unknown]: undefined };
      const { agrees, tolerance } = runDrawJob({ ...job, value: 1, spread });
      expect({ agrees, tolerance }, unknown).toEqual({ agrees: true, tolerance: 0 });
    }
  });

  test('leave nothing to show where the uncertainty is unknown, or another value was drawn', () => {
    const check = { ...drawn, agrees: false };
    const one = worked('gap');
    expect(intervalToShow(one, new Map([['another', check]]))).toBeUndefined();
    const bare = workedIn(
      measuredProject({
        ...lists,
        readings: [
          { spec: 'a', values: '8' },
          { spec: 'b', values: '5' },
        ],
      }),
      'mean',
    );
    expect(bare.u).toBeUndefined();
    expect(intervalToShow(bare, new Map([[crossCheckKey(bare), check]]))).toBeUndefined();
  });
});
