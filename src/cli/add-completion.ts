import { knownIds } from '../check/known-ids.ts';
import { readContent } from '../read/content.ts';
import { contentDir } from '../site/folders.ts';
import { requiredFields, shapeOf } from '../write/kind-fields.ts';
import { knownValues } from '../write/known-values.ts';
import { kindNames, kindOf } from './add-arguments.ts';

/** What a shell takes as it is: an id of a record that is wrong may hold anything, also what a shell would run. */
const PLAIN = /^[\p{L}\p{N}_.:+-]+$/u;

/** Prints what can stand at the end of the words typed so far, one a line; the shell picks what begins like the last. */
export async function printCandidates(words: readonly string[]): Promise<number> {
  const before = words.slice(0, -1);
  const { projects } = await readContent(contentDir);
  const [name, ...rest] = before;
  const kind = name === undefined ? undefined : kindOf(name);
  const at = rest.indexOf('--project');
  const chosen = at === -1 ? projects : projects.filter(({ id }) => id === rest[at + 1]);
  const values = (field: string) =>
    kind === undefined
      ? []
      : chosen.flatMap((project) => knownValues(kind, field, knownIds(project)));
  const last = rest.at(-1) ?? '';
  const found = () => {
    if (kind === undefined) return [...kindNames(), '--undo', '--help'];
    if (last === '--project') return projects.map(({ id }) => id);
    if (last.startsWith('--')) return values(last.slice(2));
    const options = [...Object.keys(shapeOf(kind)), 'project', 'dry', 'yes'];
    return [...requiredFields(kind).flatMap(values), ...options.map((field) => `--${field}`)];
  };
  console.log([...new Set(found())].filter((word) => PLAIN.test(word)).join('\n'));
  return 0;
}

/** Prints a script that defines the shell command `ledger-add` and completes it. */
export function completionScript(shell: string): number {
  const script = SCRIPTS[shell]?.(quoted(process.cwd()));
  if (script === undefined) {
    console.error(`There is no completion for "${shell}"; there is one for bash, zsh and fish.`);
    return 2;
  }
  console.log(script);
  return 0;
}

function quoted(path: string): string {
  return `'${path.replaceAll("'", "'\\''")}'`;
}

const SCRIPTS: Readonly<Record<string, (home: string) => string>> = {
  bash: (home) => `# eval "$(npm run -s add -- --completion bash)"
ledger-add() { npm --prefix ${home} run -s add -- "$@"; }
_ledger_add() {
  local word
  COMPREPLY=()
  while IFS= read -r word; do
    [[ $word == "\${COMP_WORDS[COMP_CWORD]}"* ]] && COMPREPLY+=("$word")
  done < <(ledger-add --candidates "\${COMP_WORDS[@]:1:COMP_CWORD}" 2>/dev/null)
}
complete -F _ledger_add ledger-add`,
  zsh: (home) => `# eval "$(npm run -s add -- --completion zsh)"
ledger-add() { npm --prefix ${home} run -s add -- "$@" }
_ledger_add() {
  local -a found
  found=("\${(@f)$(ledger-add --candidates "\${words[@]:1:CURRENT-1}" 2>/dev/null)}")
  compadd -a found
}
compdef _ledger_add ledger-add`,
  fish: (home) => `# npm run -s add -- --completion fish | source
function ledger-add; npm --prefix ${home} run -s add -- $argv; end
complete -c ledger-add -f -a '(ledger-add --candidates (commandline -opc)[2..] (commandline -ct) 2>/dev/null)'`,
};
