import type { Words } from '../words.ts';

export const measure: Words['measure'] = {};
