import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import type { z } from 'zod';
import { isTimeZone } from '../check/project.ts';
import { projectSchema } from '../model/project.ts';
import { readContent } from '../read/content.ts';
import { contentDir } from '../site/folders.ts';
import { dayIn } from '../time/day.ts';
import { blankProject, blankSite, type ProjectStart } from '../write/blank-project.ts';
import { wordsOf } from '../write/next-id.ts';
import { placeProject } from '../write/place-project.ts';
import { isInteractive } from './ask-fields.ts';
import { askTexts } from './ask-texts.ts';
import { describeProblems } from './print-problems.ts';
import { main as writeSchemas } from './schema.ts';
import { wrongUse } from './wrong-use.ts';

const OPTIONS = ['maker', 'model', 'year', 'kind', 'builder', 'currency'] as const;
const MORE = ['name', 'id', 'time-zone', 'language'] as const;
type Answers = Readonly<Partial<Record<(typeof OPTIONS)[number] | (typeof MORE)[number], string>>>;

const ASKED: Readonly<Record<(typeof OPTIONS)[number], string>> = {
  maker: 'Who made the machine',
  model: 'Which model is it',
  year: 'From which year',
  kind: 'What sort of machine is it, like "bench lathe"',
  builder: 'Your name, as readers may know it',
  currency: 'In which currency do you pay, like EUR, GBP, USD',
};

const FIELDS: Readonly<Record<string, z.ZodType>> = {
  ...projectSchema.shape.machine.shape,
  builder: projectSchema.shape.builder,
  currency: projectSchema.shape.currency,
};

/** Makes a project's folder from six answers, typed as options or asked in a terminal. */
export async function newProject(
  args: readonly string[],
  wrongUse: (text: string) => number,
): Promise<number> {
  const given = readOptions(args);
  if (typeof given === 'string') return wrongUse(given);
  const site = existsSync(join(contentDir, 'site.yaml'));
  const known = site ? (await readContent(contentDir)).site?.value.builder : undefined;
  const answers = await complete(given, known);
  if (typeof answers === 'string') return refuse(answers);

  const name = answers.name ?? `${answers.maker} ${answers.model}`;
  const id = answers.id ?? wordsOf(name);
  const timeZone = answers['time-zone'] ?? Intl.DateTimeFormat().resolvedOptions().timeZone;
  const wrong = wrongId(id) ?? (isTimeZone(timeZone) ? undefined : `"${timeZone}" is no time zone`);
  if (wrong) return refuse(wrong);
  const today = dayIn(timeZone, new Date());
  const start = { ...answers, name, timeZone, today } as ProjectStart;
  const language = answers.language ?? Intl.DateTimeFormat().resolvedOptions().locale;
  const placed = await placeProject(contentDir, id, {
    files: blankProject(start, language),
    site: blankSite(start, language),
  });
  if ('refused' in placed) return refuse(placed.refused);
  if ('problems' in placed) {
    console.error(describeProblems(placed.problems, contentDir));
    return refuse();
  }
  if (!existsSync(join(contentDir, '.schema'))) await writeSchemas();
  console.log(`${placed.siteWritten ? `Wrote ${join(contentDir, 'site.yaml')}\n` : ''}Wrote ${join(contentDir, id)}

Next:
  npm run add -- hours --project ${id}
  npm run new -- entry ${id} "First look"
  npm run dev`);
  return 0;
}

function readOptions(args: readonly string[]): Answers | string {
  try {
    const options = Object.fromEntries(
      [...OPTIONS, ...MORE].map((name) => [name, { type: 'string' as const }]),
    );
    return parseArgs({ args: [...args], options }).values as Answers;
  } catch (error) {
    return wrongUse(error);
  }
}

/** The six answers: those given, and the others asked; or why there are not six. */
async function complete(given: Answers, builder: string | undefined): Promise<Answers | string> {
  for (const name of OPTIONS) {
    const wrong = given[name] === undefined ? undefined : wrongAnswer(name, given[name]);
    if (wrong) return `--${name} ${wrong}`;
  }
  const open = OPTIONS.filter((name) => given[name] === undefined);
  if (open.length === 0) return given;
  if (isInteractive()) {
    const asked = await askTexts(
      open.map((name) => ({
        name,
        ask: ASKED[name],
        otherwise: name === 'builder' ? builder : undefined,
        wrong: (answer) => wrongAnswer(name, answer),
      })),
    );
    return asked ? { ...given, ...asked } : '';
  }
  const missing = open.filter((name) => name !== 'builder' || builder === undefined);
  if (missing.length > 0) return `Missing: ${missing.map((name) => `--${name}`).join(', ')}.`;
  return { ...given, builder: builder ?? '' };
}

function wrongAnswer(name: string, answer: string): string | undefined {
  const issue = FIELDS[name]?.safeParse(answer).error?.issues[0];
  if (issue === undefined) return undefined;
  const { params } = issue as { readonly params?: { readonly fix?: string } };
  return `"${answer}" ${issue.message}${params?.fix ? ` → ${params.fix}` : ''}`;
}

function wrongId(id: string): string | undefined {
  if (/^[a-z0-9]+(-[a-z0-9]+)*$/.test(id)) return undefined;
  return `"${id}" can't name a folder. Give --id: lower-case letters, digits and hyphens, like my-lathe.`;
}

function refuse(why = ''): number {
  console.error(`${why === '' ? '' : `${why}\n`}Nothing was written.`);
  return 1;
}
