import type { Wait } from '../model/kinds.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import type { Rule } from './rule.ts';

/** A wait ends no earlier than it begins and not in the future, and names the part or the preparation that it is for. */
export const waitsFit: Rule = ({ project, today }) =>
  project.lists.waits.flatMap(({ raw, value }) => {
    const { date, until, expected } = value;
    const problems: Problem[] = [];
    const say = (field: string, kind: string, message: string, fix: string) =>
      problems.push(problemAt(raw.placeOf([field]), kind, message, fix));

    for (const [field, day] of Object.entries({ until, expected }))
      if (day !== undefined && day < date)
        say(
          field,
          'date/order',
          `${field}: "${day}" is before date (${date})`,
          'swap them, or correct the wrong one',
        );
    if (until !== undefined && until > today)
      say(
        'until',
        'date/future',
        `until: "${until}" is in the future (today is ${today})`,
        `write "expected: ${until}" and leave until out while it lasts`,
      );
    const missing = missingOf(value);
    if (missing !== undefined)
      say(
        'for',
        'wait/for-what',
        `for: "${value.for}" does not say which ${missing}`,
        `add "${missing}" with its id, or write "for: other"`,
      );
    return problems;
  });

function missingOf(wait: Wait): 'part' | 'preparation' | undefined {
  const { for: kind } = wait;
  if (kind !== 'part' && kind !== 'preparation') return undefined;
  return wait[kind] === undefined ? kind : undefined;
}
