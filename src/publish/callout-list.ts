import type { Project, View } from '../book/types.ts';
import { standsOn } from '../ledger/standing.ts';
import { showMeasured } from '../measure/show.ts';
import type { Callout } from '../model/callout.ts';
import type { Point } from '../model/photo-fields.ts';
import { placedFindings } from '../photo/shown.ts';
import { type Words, wordsOf } from '../words/words.ts';
import type { Addresses } from './address.ts';

/** Something pointed out on a photo, ready to be drawn and read. */
export interface ListedCallout {
  readonly at: Point;
  /** The other end of a dimension line. */
  readonly to: Point | undefined;
  readonly name: string;
  readonly href: string | undefined;
  /** Value of its spec on the day, in parentheses when it was worked out. */
  readonly value: string | undefined;
}

/** The callouts of a photo as they stood on the day of a view: its record's, then findings that say where on it they are. */
export function calloutList(
  view: View,
  file: string,
  { to, language }: { readonly to: Addresses; readonly language: string },
): ListedCallout[] {
  const { project } = view;
  const callouts = project.photoRecords.find((record) => record.file === file)?.callouts ?? [];
  const named = new Set(callouts.map(({ finding }) => finding));
  const found = placedFindings(project.findings, file).filter(
    (row) => standsOn(row, view.day) && !named.has(row.id),
  );
  const reader = { language, otherUnits: project.info.otherUnits };
  return [...callouts, ...found.map(({ at, id }): Callout => ({ at, finding: id }))].map(
    (callout) => {
      const latest = callout.spec === undefined ? undefined : view.spec(callout.spec)?.latest;
      return {
        at: callout.at,
        to: callout.to,
        value: latest && showMeasured(latest, reader).text,
        ...subjectOf(callout, project, { to, words: wordsOf(language) }),
      };
    },
  );
}

function subjectOf(
  { part, spec, finding, label = '' }: Callout,
  project: Project,
  { to, words }: { readonly to: Addresses; readonly words: Words },
) {
  const nameIn = (list: readonly { readonly id: string; readonly name: string }[], id: string) =>
    list.find((item) => item.id === id)?.name ?? id;
  if (part !== undefined) return { name: nameIn(project.parts, part), href: to.row(project, part) };
  if (spec !== undefined)
    return { name: nameIn(project.specs, spec), href: to.spec(project, spec) };
  if (finding === undefined) return { name: label, href: undefined };
  const row = project.findings.find(({ id }) => id === finding);
  const where = row
    ? [
        nameIn(project.parts, row.part),
        row.place,
        words.photos.found(words.parts.survey.found[row.found]),
      ]
    : [finding];
  return {
    name: where.filter((text) => text !== undefined).join(', '),
    href: to.row(project, finding),
  };
}
