import { atomFeed } from '../publish/atom.ts';
import { siteNow } from '../site/now.ts';

export async function GET(): Promise<Response> {
  const { book, site, to } = await siteNow();
  return new Response(atomFeed(book, site, to), {
    headers: { 'Content-Type': 'application/atom+xml; charset=utf-8' },
  });
}
