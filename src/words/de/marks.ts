import type { Words } from '../words.ts';

export const marks: Words['marks'] = {};
