import { z } from 'zod';
import { address, text } from './fields.ts';

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
  moments: text({
    description: 'address of a video moment; {address} and {seconds} are put in',
  }).default('{address}#t={seconds}'),
});
