import { parseArgs } from 'node:util';
import { type Day, parseDay } from '../time/day.ts';
import { wrongUse } from './wrong-use.ts';

const HELP = `npm run mark [-- project ...] [--date 2026-03-31] [--key path] [--new-secret]
npm run mark -- --new-key path

Checks the content, and marks the rows that no mark has yet: from then on the check refuses it when one of them was changed, moved or
removed. Without a name it marks every project.
--date        day of the mark, today without it; rows recorded later are left for the next mark
--key         an Ed25519 key in PEM to sign with, kept outside the repository; or WITNESSMARK_KEY
--new-key     makes such a key, and prints the line for project.yaml
--new-secret  begins a new secret for the rows to come, when marks-secret.txt is lost
Exit status: 0 marked or nothing new, 1 refused, 2 wrong use.
`;

/** What the mark command is asked for. */
export interface MarkArguments {
  readonly projects: readonly string[];
  readonly date: Day | undefined;
  readonly key: string | undefined;
  readonly newKey: string | undefined;
  readonly newSecret: boolean;
}

/** Reads the arguments of the mark command, or gives what to say instead, and the exit status. */
export function readMarkArguments(
  args: readonly string[],
): MarkArguments | { readonly say: string; readonly status: number } {
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        date: { type: 'string' },
        key: { type: 'string', default: process.env['WITNESSMARK_KEY'] ?? '' },
        'new-key': { type: 'string' },
        'new-secret': { type: 'boolean', default: false },
        help: { type: 'boolean', short: 'h' },
      },
    });
    if (values.help) return { say: HELP, status: 0 };
    const date = values.date === undefined ? undefined : parseDay(values.date);
    if (values.date !== undefined && date === undefined)
      return { say: `--date: "${values.date}" is no day; write it like 2026-03-31`, status: 2 };
    return {
      projects: positionals,
      date,
      key: values.key || undefined,
      newKey: values['new-key'],
      newSecret: values['new-secret'],
    };
  } catch (error) {
    return { say: `${wrongUse(error)}\n\n${HELP}`, status: 2 };
  }
}
