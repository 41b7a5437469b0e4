import { SUMMARY_TO_WRITE } from '../model/entry.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import type { Rule } from './rule.ts';

/** An entry's file is named by its day and its subject, and the day is the one in its front matter. */
export const entriesAreNamedByDay: Rule = ({ project }) =>
  project.entries.flatMap((entry) => {
    const name = `${entry.slug}.mdx`;
    const match = /^(\d{4}-\d{2}-\d{2})-([a-z0-9]+(?:-[a-z0-9]+)*)$/.exec(entry.slug);
    const place = { file: entry.file, line: 1, column: 1 };
    if (!match)
      return [
        problemAt(
          place,
          'entry/name',
          `the file name "${name}" is not a day and a subject`,
          `name it like "${entry.value.date}-cab-off.mdx"`,
        ),
      ];
    if (match[1] === entry.value.date) return [];
    const message = `date: "${entry.value.date}" in the front matter, and "${match[1]}" in the file name`;
    return [
      problemAt(
        entry.raw.placeOf(['date']),
        'entry/date',
        message,
        `write "date: ${match[1]}", or rename the file to "${entry.value.date}-${match[2]}.mdx"`,
      ),
    ];
  });

/** Moments belong to a video. */
export const momentsHaveAVideo: Rule = ({ project }) =>
  project.entries.flatMap((entry): Problem[] => {
    if (entry.value.video !== undefined || !entry.value.moments?.length) return [];
    return [
      problemAt(
        entry.raw.keyPlaceOf(['moments']),
        'entry/no-video',
        'moments are listed, and the entry names no video',
        'add "video: https://…"',
      ),
    ];
  });

/** An entry that is no draft any more says its summary in words of its own. */
export const summariesAreWritten: Rule = ({ project }) =>
  project.entries.flatMap(({ value, raw }): Problem[] => {
    if (value.draft || value.summary !== SUMMARY_TO_WRITE) return [];
    const message = 'the summary is still the one of a new draft';
    return [
      {
        ...problemAt(
          raw.placeOf(['summary']),
          'entry/summary',
          message,
          'write one plain sentence, for lists and feeds',
        ),
        level: 'warning',
      },
    ];
  });
