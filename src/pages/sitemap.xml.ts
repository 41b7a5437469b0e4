import { sitemap, sitePages } from '../publish/sitemap.ts';
import { siteNow } from '../site/now.ts';

export async function GET(): Promise<Response> {
  const { book, to } = await siteNow();
  return new Response(sitemap(sitePages(book, to), to), {
    headers: { 'Content-Type': 'application/xml; charset=utf-8' },
  });
}
