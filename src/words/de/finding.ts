import type { Words } from '../words.ts';

export const finding: Words['finding'] = {};
