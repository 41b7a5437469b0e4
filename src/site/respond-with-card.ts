import { join } from 'node:path';
import type { Card } from '../card/draw-card.ts';
import { makeCard } from '../card/make-card.ts';
import { cacheDir } from './folders.ts';

/** A card as the answer of an endpoint; it is kept with the derived photos. */
export async function respondWithCard(card: Card): Promise<Response> {
  const png = await makeCard(card, join(cacheDir, 'cards'));
  return new Response(png as Uint8Array<ArrayBuffer>, { headers: { 'Content-Type': 'image/png' } });
}
