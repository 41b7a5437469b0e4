import { type ListKind, listKinds } from '../model/kinds.ts';
import { suggest } from '../read/nearest.ts';
import { shapeOf } from '../write/kind-fields.ts';
import { asSentence } from './as-sentence.ts';

export const HELP = `npm run add -- <kind> [words ...] [--field value ...]
npm run add -- --undo

Adds a row to a project's ledger. Words go to the field that they fit: 2:30 to hours, kg to unit, an id to what it names; the rest is
the row's text. What is left out and goes on from row to row (phase, kind of work, instrument ...) is taken from last time.
In a terminal it asks for what is missing, shows the row and asks before it writes.

  npm run add -- hours 2:30 --phase teardown "Took the cab off"
  npm run add -- cost 42.50 tool "Sling, two metres" --receipt 26-014.pdf
  npm run add -- reading frame-diagonal 1831 1832 1831 --state before
  npm run add -- part "Door seal" --system body --source new --wanted 2026-03-08
  npm run add -- search door-seal none "Never heard of it"
  npm run add -- cost                       asks step by step

--project     which machine, where there are several
--date        day it is about, today without it; also "yesterday"
--yes, -y     writes without asking
--dry         shows the row and writes nothing
--undo        takes the last addition back, as long as its file was not changed since; also: npm run undo
--completion  prints a script for bash, zsh or fish that completes kinds, fields and ids
Without a terminal nothing is asked: a complete row is written at once.
Exit status: 0 written, 1 refused or incomplete, 2 wrong use.
`;

/** What the add command is asked for. */
export interface AddArguments {
  readonly kind: ListKind | undefined;
  readonly words: readonly string[];
  readonly fields: Readonly<Record<string, string>>;
  readonly project: string | undefined;
  readonly yes: boolean;
  readonly dry: boolean;
  readonly undo: boolean;
  readonly completion: string | undefined;
}

interface Said {
  readonly say: string;
  readonly status: number;
}

const SWITCHES: Readonly<Record<string, 'yes' | 'dry' | 'undo' | 'help'>> = {
  '--yes': 'yes',
  '-y': 'yes',
  '--dry': 'dry',
  '--undo': 'undo',
  '--help': 'help',
  '-h': 'help',
};

/** Reads the arguments of the add command, or gives what to say instead, and the exit status. */
export function readAddArguments(args: readonly string[]): AddArguments | Said {
  const words: string[] = [];
  const fields: Record<string, string> = {};
  const on = new Set<string>();
  const rest = [...args];
  for (let word = rest.shift(); word !== undefined; word = rest.shift()) {
    const option = /^--([a-z][\w.-]*)(?:=([\s\S]*))?$/.exec(word);
    const switched = Object.hasOwn(SWITCHES, word) ? SWITCHES[word] : undefined;
    if (switched) on.add(switched);
    else if (word === '--') words.push(...rest.splice(0));
    else if (option?.[1] === undefined) words.push(word);
    else {
      const [, name, given] = option;
      const value = given ?? rest.shift();
      if (value === undefined) return wrong(`${word} has no value`);
      fields[name] = Object.hasOwn(fields, name) ? `${fields[name]} ${value}` : value;
    }
  }
  if (on.has('help')) return { say: HELP, status: 0 };
  const { project, completion, ...own } = fields;
  const switches = { yes: on.has('yes'), dry: on.has('dry'), undo: on.has('undo') };
  const [name, ...others] = words;
  const rested = { project, completion, ...switches };
  if (name === undefined) return { kind: undefined, words: [], fields: own, ...rested };
  const kind = kindOf(name);
  if (kind === undefined) return wrong(`There is no kind "${name}". ${kindHint(name)}`);
  return wrongField(kind, own) ?? { kind, words: others, fields: own, ...rested };
}

/** Singular names of the kinds that can be added to, by which a builder calls a row. */
export function kindNames(): string[] {
  return (Object.keys(listKinds) as ListKind[]).map(singular);
}

/** The name of one record of a kind. */
export function singular(kind: ListKind): string {
  if (kind === 'hours') return kind;
  return /ches$/.test(kind) ? kind.replace(/es$/, '') : kind.replace(/s$/, '');
}

/** The kind that a word names, in singular or plural. */
export function kindOf(word: string): ListKind | undefined {
  return (Object.keys(listKinds) as ListKind[]).find(
    (kind) => kind === word || singular(kind) === word || kind === `${word}s`,
  );
}

function kindHint(word: string): string {
  const names = kindNames();
  return asSentence(suggest(word, names)) ?? `Kinds: ${names.join(', ')}`;
}

function wrongField(kind: ListKind, fields: Readonly<Record<string, string>>): Said | undefined {
  const known = Object.keys(shapeOf(kind));
  const unknown = Object.keys(fields).find((name) => !known.includes(name.split('.')[0] ?? ''));
  if (unknown === undefined) return undefined;
  const hint = asSentence(suggest(unknown, known)) ?? `Fields of ${kind}: ${known.join(', ')}`;
  return wrong(`There is no field "${unknown}". ${hint}`);
}

function wrong(text: string): Said {
  return { say: text, status: 2 };
}
