import fc from 'fast-check';
import type { Activity } from '../../src/plan/network.ts';

const link = fc.record({
  back: fc.integer({ min: 1, max: 8 }),
  lag: fc.integer({ min: -4, max: 6 }),
});
const node = fc.record({
  duration: fc.integer({ min: 0, max: 12 }),
  links: fc.uniqueArray(link, { maxLength: 4, selector: ({ back }) => back }),
  wait: fc.option(fc.integer({ min: 0, max: 40 }), { nil: undefined, freq: 4 }),
});

/** Networks without a ring: each activity follows some of those before it. Their list is shuffled. */
export const networks: fc.Arbitrary<Activity[]> = fc
  .array(node, { minLength: 1, maxLength: 24 })
  .map((nodes) =>
    nodes.map(({ duration, links, wait }, index) => ({
      id: `a${index}`,
      duration,
      after: links
        .filter(({ back }) => back <= index)
        .map(({ back, lag }) => ({ id: `a${index - back}`, lag })),
      waits: wait === undefined ? [] : [{ id: `w${index}`, until: wait }],
    })),
  )
  .chain((list) => fc.shuffledSubarray(list, { minLength: list.length }));
