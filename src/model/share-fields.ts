import { type FieldFacts, numberOrText, readBy } from './field.ts';

/** A share of a whole in per cent, `40 %` or `40`, as decimal text without the sign. */
export const percent = (facts: FieldFacts = {}) =>
  readBy<string>(
    'percent',
    (value) => {
      const digits = /^(\d{1,4}(?:\.\d{1,4})?) ?%?$/.exec(value)?.[1];
      return digits ?? { wrong: 'is not a share in per cent', fix: percentFix(value) };
    },
    { editor: numberOrText, ...facts },
  );

/** `in`, `out`, or the share that is in. */
export const inOrShare = () =>
  readBy<'in' | 'out' | { readonly percent: string }>(
    'word',
    (value) => {
      if (value === 'in' || value === 'out') return value;
      const digits = /^(\d{1,2}(?:\.\d{1,4})?) ?%$/.exec(value)?.[1];
      return digits === undefined
        ? {
            wrong: 'is not one of the words known here',
            fix: 'write in, out, or a share like 40 %',
          }
        : { percent: digits };
    },
    { editor: { type: 'string' } },
  );

function percentFix(value: string): string {
  const point = /^(\d+),(\d+) ?%?$/.exec(value);
  return point ? `write "${point[1]}.${point[2]} %"` : 'write it like 20 %';
}
