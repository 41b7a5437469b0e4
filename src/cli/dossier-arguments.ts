import { parseArgs } from 'node:util';
import { tellWrongUse } from './wrong-use.ts';

/** What `npm run dossier` was asked for. */
export interface DossierArguments {
  /** None means all. */
  readonly projects: readonly string[];
  readonly out: string;
  readonly paper: 'A4' | 'Letter';
  /** Whole identity numbers, for a copy that is handed over and never published. */
  readonly whole: boolean;
  /** Print from the site as it was built last. */
  readonly built: boolean;
}

/** Said for `--help` and for wrong use. */
export const HELP = `npm run dossier [-- project … --out dossier --paper a4 --identity full --built]

Builds the site, then prints the dossier of each project to <out>/<project>.pdf, with the numbers of its pages in the contents.
--paper letter prints on Letter instead of A4. --built prints from the site as it was built last.
--identity full prints identity numbers whole, to <out>/<project>-private.pdf: it stays on this machine, and is not for publishing.
What a dossier tells is chosen under "dossier" in project.yaml.
Exit status: 0 printed, 1 refused or no browser, 2 wrong use.
`;

/** Reads the arguments; undefined for a wrong use. */
export function readDossierArguments(args: readonly string[]): DossierArguments | undefined {
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        out: { type: 'string', default: 'dossier' },
        paper: { type: 'string', default: 'a4' },
        identity: { type: 'string', default: 'masked' },
        built: { type: 'boolean', default: false },
      },
    });
    const { out, paper, identity, built } = values;
    if (!['a4', 'letter'].includes(paper))
      throw new Error(`--paper is a4 or letter, and not "${paper}".`);
    if (!['masked', 'full'].includes(identity))
      throw new Error(`--identity is masked or full, and not "${identity}".`);
    return {
      ...{ projects: positionals, out, built, whole: identity === 'full' },
      paper: paper === 'letter' ? 'Letter' : 'A4',
    };
  } catch (error) {
    return tellWrongUse(error);
  }
}
