import { z } from 'zod';
import { readBy } from './field.ts';
import { address, text } from './fields.ts';
import { path } from './path-field.ts';

/** A page that is elsewhere now. Both are addresses inside the site, without its own address before them. */
const movedSchema = z.strictObject({
  from: path(),
  to: path(),
});

/** The address of a video moment. It becomes a link, so that it is an https address like the video's own. */
const momentTemplate = () =>
  readBy<string>(
    'address',
    (value) =>
      /^(\{address\}|https:\/\/[^\s/])\S*$/.test(value)
        ? value
        : { wrong: 'is no address', fix: 'start with {address}, like {address}#t={seconds}' },
    {
      editor: { type: 'string' },
      description: 'address of a video moment; {address} and {seconds} are put in',
    },
  );

/** The whole site: `content/site.yaml`. */
export const siteSchema = z.strictObject({
  title: text(),
  address: address(),
  language: text({ editor: { type: 'string', examples: ['en-GB'] } }),
  builder: text({ description: 'public name of the builder' }),
  tagline: text().optional(),
  contact: text({
    description: 'how a reader may write: an address that may be public',
  }).optional(),
  moments: momentTemplate().default('{address}#t={seconds}'),
  moved: z
    .array(movedSchema)
    .meta({ description: 'pages that are elsewhere now; each old address leads to the new one' })
    .optional(),
  firstAddress: address({
    description: 'where the site was first published, once it is elsewhere: ids in feeds keep it',
  }).optional(),
});
