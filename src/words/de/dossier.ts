import type { Words } from '../words.ts';

export const dossier: Words['dossier'] = {};
