import { createInterface } from 'node:readline/promises';
import { knownIds } from '../check/known-ids.ts';
import { factsOf, refOf } from '../model/facts.ts';
import type { ListKind } from '../model/kinds.ts';
import type { ReadProject } from '../read/content.ts';
import { suggest } from '../read/nearest.ts';
import type { Fields } from '../write/csv-append.ts';
import { requiredFields, shapeOf } from '../write/kind-fields.ts';
import { knownValues, takes, wrongWith } from '../write/known-values.ts';
import { carried, lastTime, usualFields } from '../write/last-time.ts';
import type { ReadyRow } from '../write/ready-row.ts';
import { asSentence } from './as-sentence.ts';

/** Whether somebody is there to answer. */
export function isInteractive(): boolean {
  return process.stdin.isTTY === true && process.stdout.isTTY === true;
}

/** Asks for the fields of a row one by one; an empty answer keeps what stands in brackets. Nothing when the asking is broken off. */
export async function askFields(
  project: ReadProject,
  kind: ListKind,
  { fields: ready, missing }: ReadyRow,
  askAll: boolean,
): Promise<Fields | undefined> {
  const known = knownIds(project);
  const required = requiredFields(kind).filter((name) => name !== 'id');
  const usual = usualFields(project, kind);
  const wanted = askAll ? [...required, ...usual] : missing;
  const fields: Record<string, string> = { ...ready };
  let offered: readonly string[] = [];
  const terminal = createInterface({
    input: process.stdin,
    output: process.stdout,
    completer: (line: string): [string[], string] => [
      offered.filter((value) => value.startsWith(line)),
      line,
    ],
  });
  try {
    for (const name of Object.keys(shapeOf(kind)).filter((field) => wanted.includes(field))) {
      offered = knownValues(kind, name, known);
      const last = carried(kind).includes(name) ? lastTime(project, kind, fields)[name] : undefined;
      const held = askAll && missing.includes(name) ? last : (fields[name] ?? last);
      for (;;) {
        const answer = (await terminal.question(questionOf(kind, name, held, offered))).trim();
        const value = answer === '' ? (held ?? '') : answer;
        if (answer === '-' || (value === '' && !required.includes(name))) {
          delete fields[name];
          break;
        }
        const wrong = wrongAnswer(kind, name, value, offered, takes(kind, name, value, known));
        if (wrong === undefined) {
          fields[name] = value;
          break;
        }
        console.log(`  ${wrong}`);
      }
    }
    return fields;
  } catch {
    return undefined;
  } finally {
    terminal.close();
  }
}

function questionOf(
  kind: ListKind,
  name: string,
  held: string | undefined,
  offered: readonly string[],
): string {
  const schema = shapeOf(kind)[name];
  const { description, reads } = schema ? factsOf(schema) : {};
  const few = offered.length > 0 && offered.length <= 12 ? offered.join(' ') : '';
  const isRef = schema !== undefined && refOf(schema) !== undefined;
  const hint = few || (isRef ? '? lists them' : (description ?? reads ?? ''));
  return `${name}${hint ? ` (${hint})` : ''}${held ? ` [${held}]` : ''}: `;
}

function wrongAnswer(
  kind: ListKind,
  name: string,
  value: string,
  offered: readonly string[],
  isTaken: boolean,
): string | undefined {
  if (value === '?') return offered.join(' ') || 'any text';
  if (value === '') return 'is needed';
  if (isTaken) return undefined;
  const told = wrongWith(kind, name, value);
  if (told) return `"${value}" ${told.wrong}${told.fix ? ` → ${told.fix}` : ''}`;
  return `"${value}" is not known. ${asSentence(suggest(value, offered)) ?? ''}`.trimEnd();
}

/** Asks yes or no; an empty answer is yes. */
export async function confirm(question: string): Promise<boolean> {
  const terminal = createInterface({ input: process.stdin, output: process.stdout });
  try {
    return !/^n/i.test((await terminal.question(`${question} [Y/n] `)).trim());
  } catch {
    return false;
  } finally {
    terminal.close();
  }
}
