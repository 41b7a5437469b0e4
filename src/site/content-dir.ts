import { resolve } from 'node:path';

/** The content folder that the site is made from. */
export const contentDir: string = resolve(process.env.WITNESSMARK_CONTENT ?? 'content');

/** Where derived files are kept between runs; nothing in it is the builder's. */
export const workDir: string = resolve('.witnessmark');
