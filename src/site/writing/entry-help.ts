import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { suggestedHazards } from '../../book/suggested-hazards.ts';
import { type Untold, untoldIn } from '../../book/untold.ts';
import type { ReadContent, ReadEntry, ReadProject } from '../../read/content.ts';
import { contentDir } from '../folders.ts';
import { type Html, html } from './html.ts';
import { placeLink } from './place-link.ts';

/** What the panel says of an entry. */
export async function entryHelp(
  content: ReadContent,
  project: ReadProject,
  entry: ReadEntry,
): Promise<readonly Html[]> {
  const inOrder = project.entries.toSorted((a, b) => (a.value.date < b.value.date ? -1 : 1));
  const index = inOrder.indexOf(entry);
  const after = inOrder[index - 1]?.value.date;
  const until = index === inOrder.length - 1 ? undefined : entry.value.date;
  const untold = untoldIn(project, { after, until });
  const source = await readFile(join(contentDir, entry.file), 'utf8');
  const language =
    entry.value.language ?? project.info?.value.language ?? content.site?.value.language ?? 'en';
  return [
    ...untoldParts(untold),
    ...specParts(
      project,
      (day) => (after === undefined || day > after) && (until === undefined || day <= until),
    ),
    ...hazardParts(entry, proseOf(source), language),
  ];
}

function untoldParts({ rows, photos }: Untold): Html[] {
  return [
    ...section(
      'Rows not yet told',
      rows.map(({ id, day, file, line }) => html`<li>${day} ${id} ${placeLink(file, line)}</li>`),
    ),
    ...section(
      'Photos not yet shown',
      photos.map((name) => html`<li>${name}</li>`),
    ),
  ];
}

function specParts({ lists }: ReadProject, within: (day: string) => boolean): Html[] {
  const names = new Map(lists.specs.map(({ value }) => [value.id, value.name]));
  const read = lists.readings
    .filter(({ value }) => within(value.date))
    .map(({ value }) => value.spec);
  return section(
    'Specs that changed',
    [...new Set(read)].map((id) => html`<li>${names.get(id) ?? id} (<code>${id}</code>)</li>`),
  );
}

function hazardParts({ body }: ReadEntry, prose: string, language: string): Html[] {
  const notes = body.components
    .filter(({ name }) => name === 'Hazard')
    .map(({ props }) => props.map(({ literal }) => String(literal)).join(' '));
  return section(
    'Hazards without a note',
    suggestedHazards(prose, notes, language).map(
      ({ kind, words }) => html`<li>${kind.replace('-', ' ')}: the text says “${words}”</li>`,
    ),
  );
}

/** The text of an entry without front matter and components, whose words are not the story's. */
function proseOf(source: string): string {
  return source
    .replace(/^---\r?\n[\s\S]*?\r?\n---/, '')
    .replace(/<[A-Z][^<>]*>/g, ' ')
    .replace(/\]\([^)]*\)/g, ']');
}

function section(title: string, items: readonly Html[]): Html[] {
  return items.length === 0 ? [] : [html`<h2>${title}</h2><ul>${items}</ul>`];
}
