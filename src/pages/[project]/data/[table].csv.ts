import type { APIContext } from 'astro';
import { downloadsOf, tablePaths } from '../../../site/downloads.ts';
import { found } from '../../../site/found.ts';

export const getStaticPaths = tablePaths;

export async function GET({ params }: APIContext): Promise<Response> {
  const { files } = await downloadsOf(params.project);
  const file = found(
    files.tables.find(({ table }) => table.name === params.table),
    'table',
  );
  return new Response(file.text, {
    headers: { 'Content-Type': 'text/csv; charset=utf-8; header=present' },
  });
}
