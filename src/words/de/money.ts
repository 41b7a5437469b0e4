import type { Words } from '../words.ts';

export const money: Words['money'] = {};
