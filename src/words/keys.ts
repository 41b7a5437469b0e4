import type { en } from './en.ts';

/** All that the site says by itself, in one language. English is the measure: another language has the same keys and the same arguments. */
export type Words = typeof en;
