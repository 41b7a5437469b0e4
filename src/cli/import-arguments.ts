import { parseArgs } from 'node:util';
import { wrongUse } from './wrong-use.ts';

/** How the import command is used. */
const HELP = `npm run import -- FILE [--project P] [--as NAME] [--write]

Reads a bank's or a spreadsheet's CSV, or a calendar's events (.ics), into rows of the ledger, as a mapping in the project's imports.yaml says.
A folder of pictures is copied into photos/ of the project, and for each the entry is named to which it belongs.
Without --write it only shows what would be added, what is known from an earlier import, what a rule skips, and what is refused.

  npm run import -- ~/statement-03.csv                    shows what would be added
  npm run import -- ~/statement-03.csv --write            adds it
  npm run import -- march.csv --as savings --write        reads it as the mapping "savings" says
  npm run import -- hours.ics --as workshop --write       events of a calendar, as hours
  npm run import -- ~/camera --project lapwing --write    pictures of a folder

--project P   the project, where there are several
--as NAME     the mapping, where the file's name does not say
--write       adds rows or copies pictures; refused lines go to FILE.refused.csv (or .ics), with the reason

Exit status: 0 read, 1 lines refused or problems, 2 wrong use. See docs/importing.md.
`;

/** What the command was asked to do. */
export interface ImportArguments {
  readonly file: string;
  readonly project: string | undefined;
  readonly as: string | undefined;
  readonly write: boolean;
}

/** Reads the arguments, or says how they are used. */
export function readImportArguments(
  args: readonly string[],
): ImportArguments | { readonly say: string; readonly status: number } {
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        project: { type: 'string' },
        as: { type: 'string' },
        write: { type: 'boolean', default: false },
        help: { type: 'boolean', short: 'h' },
      },
    });
    if (values.help) return { say: HELP, status: 0 };
    const [file] = positionals;
    if (file === undefined || positionals.length > 1) return { say: HELP, status: 2 };
    return { file, project: values.project, as: values.as, write: values.write };
  } catch (error) {
    return { say: `${wrongUse(error)}\n\n${HELP}`, status: 2 };
  }
}
