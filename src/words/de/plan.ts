import type { Words } from '../words.ts';

export const plan: Words['plan'] = {};
