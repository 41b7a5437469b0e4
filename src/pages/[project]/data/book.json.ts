import type { APIContext } from 'astro';
import { downloadsOf, jsonResponse } from '../../../site/downloads.ts';
import { projectPaths } from '../../../site/paths.ts';

export const getStaticPaths = projectPaths;

export async function GET({ params }: APIContext): Promise<Response> {
  const { files } = await downloadsOf(params.project);
  return jsonResponse(files.book);
}
