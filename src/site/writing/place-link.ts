import { join } from 'node:path';
import { contentDir } from '../folders.ts';
import { type Html, html } from './html.ts';

/** A place in a content file as a link that opens it in the editor. */
export function placeLink(file: string, line: number, column = 1): Html {
  const path = `${join(contentDir, file)}:${line}:${column}`;
  const address = `/__open-in-editor?file=${encodeURIComponent(path)}`;
  return html`<a class="place" href="${address}">${file}:${line}:${column}</a>`;
}
