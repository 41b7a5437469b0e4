import type { Words } from '../words.ts';

export const parts: Words['parts'] = {};
