import { checkContent } from '../check/check.ts';
import { listKinds } from '../model/kinds.ts';
import type { ReadContent, ReadProject } from '../read/content.ts';
import type { Problem } from '../read/problem.ts';
import type { RawRecord } from '../read/raw.ts';
import { type Understood, understand } from '../read/understand.ts';
import { bankNumberIn } from './bank-number.ts';
import type { Outcome } from './outcome.ts';

type Added = Extract<Outcome, { is: 'added' }>;

/** Where rows of an import stand while they are checked: no file of the content folder is called so. */
const SOURCE = '(imported)';

/** The same outcomes, with rows refused that the ledger's own rules refuse; each is checked together with all rows there are. */
export function checkRows(
  outcomes: readonly Outcome[],
  content: ReadContent,
  project: ReadProject,
  now: Date,
): Outcome[] {
  const refusals = new Map<number, string>();
  const good: { kind: Added['row']['kind']; record: Understood<unknown> }[] = [];
  for (const outcome of outcomes) {
    if (outcome.is !== 'added') continue;
    const read = understandRow(outcome);
    if (Array.isArray(read)) refusals.set(outcome.line, sentences(read));
    else good.push({ kind: outcome.row.kind, record: read });
    const published = publishedNumber(outcome);
    if (published) refusals.set(outcome.line, published);
  }

  const lists = Object.fromEntries(
    Object.entries(project.lists).map(([kind, records]) => [
      kind,
      [...records, ...good.filter((one) => one.kind === kind).map(({ record }) => record)],
    ]),
  ) as unknown as ReadProject['lists'];
  const problems = checkContent(
    { ...content, problems: [], projects: [{ ...project, lists }] },
    now,
  );
  for (const { file, line, level, message, fix } of problems)
    if (file === SOURCE && level === 'error' && !refusals.has(line))
      refusals.set(line, sentences([{ message, fix }]));
  return outcomes.map((outcome) => {
    const why = refusals.get(outcome.line);
    const { line, text } = outcome;
    return why === undefined || outcome.is !== 'added'
      ? outcome
      : { line, text, is: 'refused', why };
  });
}

function understandRow({ line, row: { kind, fields } }: Added) {
  const place = () => ({ file: SOURCE, line, column: 1 });
  const raw: RawRecord = {
    value: { id: `imported-${line}`, ...fields },
    placeOf: place,
    keyPlaceOf: place,
  };
  return understand(raw, listKinds[kind] as (typeof listKinds)['costs'], `${kind} record`);
}

function sentences(problems: readonly Pick<Problem, 'message' | 'fix'>[]): string {
  return problems
    .map(({ message, fix }) => {
      const missing = /^"(.+)" is missing$/.exec(message)?.[1];
      if (missing) return `no column, fixed value or rule gives "${missing}"`;
      return fix ? `${message} (${fix})` : message;
    })
    .join('; ');
}

/** Texts of banks hold account numbers, and a row's text is published unless it says otherwise. */
function publishedNumber({ row: { fields } }: Added): string | undefined {
  const open = ['what', 'note'].filter(
    (field) => !(fields.withhold ?? '').split(/\s+/).includes(field),
  );
  const found = open.find((field) => bankNumberIn(fields[field] ?? ''));
  return (
    found &&
    `"${found}" holds an account or card number and would be published; set withhold: ${found}`
  );
}
