import { SUMMARY_TO_WRITE } from '../model/entry.ts';
import type { Day } from '../time/day.ts';
import { writeScalar } from './yaml-scalar.ts';

/** What an entry is begun with. */
export interface EntryStart {
  readonly title: string;
  readonly date: Day;
  readonly phase: string;
  /** Rows that no entry tells yet: the id, and what the row says. */
  readonly rows: readonly { readonly id: string; readonly day: Day; readonly line: string }[];
  /** Names of photos that no entry shows yet. */
  readonly photos: readonly string[];
}

/** An entry to write into: front matter, what happened as comments that no reader sees, and places for the text. */
export function entrySkeleton({ title, date, phase, rows, photos }: EntryStart): string {
  const notes = [
    ...(rows.length === 0 ? [] : ['Rows that no entry tells yet. Link to one: [words](row:id)']),
    ...rows.map(({ id, day, line }) => `${day} ${id}: ${line}`),
    ...(photos.length === 0
      ? []
      : ['Photos that no entry shows yet: <Photo file="…" alt="…" caption="…" />']),
    ...photos,
  ];
  const places = [
    'What you wanted to do, and why.',
    'What you did. Before a dangerous step: <Hazard signal="WARNING" hazard="…" harm="…" avoid="…" />',
    'What you found, and what comes next.',
  ];
  return `---
title: ${writeScalar(title, 'plain', 'block')}
date: ${date}
phase: ${phase}
summary: ${SUMMARY_TO_WRITE}
draft: true # take this line out when the entry is ready
---

${[...paragraph(notes), ...places.map(comment)].join('\n\n')}

<Tally />
`;
}

function paragraph(notes: readonly string[]): string[] {
  return notes.length === 0 ? [] : [notes.map(comment).join('\n')];
}

/** A comment of MDX on one line, whatever the text says. */
function comment(text: string): string {
  return `{/* ${text.replace(/\s+/g, ' ').replaceAll('*/', '* /')} */}`;
}
