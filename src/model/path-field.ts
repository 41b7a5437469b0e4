import { readBy } from './field.ts';

/** An address inside the site: `lapwing/specs/wheelbase/`. */
export const path = () =>
  readBy<string>(
    'path',
    (value) => {
      if (value === '') return { wrong: 'is empty' };
      const fix = value.replace(/^https:\/\/[^/]*/, '').replace(/^\/+/, '');
      if (fix !== value)
        return { wrong: 'is not an address inside the site', fix: `write "${fix}"` };
      return /^[^\s?\\:]+$/.test(value) && !/(^|\/)\.{0,2}(\/|$)./.test(value)
        ? value
        : {
            wrong: 'is not an address inside the site',
            fix: 'write it like "my-machine/specs/wheelbase/"',
          };
    },
    { editor: { type: 'string', examples: ['my-machine/specs/wheelbase/'] } },
  );
