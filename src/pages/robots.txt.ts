import { siteNow } from '../site/now.ts';

export async function GET(): Promise<Response> {
  const { to } = await siteNow();
  return new Response(
    `User-agent: *\nAllow: /\nSitemap: ${to.absolute(`${to.home()}sitemap.xml`)}\n`,
    { headers: { 'Content-Type': 'text/plain; charset=utf-8' } },
  );
}
