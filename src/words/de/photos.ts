import type { Words } from '../words.ts';

export const photos: Words['photos'] = {};
