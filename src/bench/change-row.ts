import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Reading } from '../model/kinds.ts';
import { type ReadProject, readContent } from '../read/content.ts';
import type { Understood } from '../read/understand.ts';
import { runCommand } from './run-measured.ts';

/** Adds a row of hours to the first project. */
export async function appendHours(content: string): Promise<void> {
  const { id } = await firstProject(content);
  const words = ['hours', '0:45', 'Looked at the drawing again'];
  await runCommand(['add', ...words, '--project', id, '--yes'], { WITNESSMARK_CONTENT: content });
}

/** Sees to it that the first project has a reading that no mark closes over; in a marked ledger the last one is taken once more. */
export async function leaveOneUnmarked(content: string): Promise<void> {
  const project = await firstProject(content);
  if (unmarkedReading(project) !== undefined) return;
  const last = project.lists.readings.at(-1)?.value;
  if (last === undefined) throw new Error('the first project has no reading');
  const values = last.values.map(({ value, decimals }) => value.toFixed(decimals));
  const words = ['reading', last.spec, ...values, last.unit, last.instrument];
  const fields = ['--state', last.state, '--project', project.id, '--yes'];
  await runCommand(['add', ...words, ...fields], { WITNESSMARK_CONTENT: content });
}

/** Changes the last digit of an unmarked reading of the first project. */
export async function changeReading(content: string): Promise<void> {
  const reading = unmarkedReading(await firstProject(content));
  if (reading === undefined) throw new Error('every reading is marked');
  const { file, line, column } = reading.raw.placeOf(['values']);
  const lines = (await readFile(join(content, file), 'utf8')).split('\n');
  const start = lines.slice(0, line - 1).join('\n').length + (line > 1 ? 1 : 0) + column - 1;
  const text = lines.join('\n');
  const rest = text.slice(start).replace(/\d(?![\d.])/, (digit) => (digit === '5' ? '4' : '5'));
  await writeFile(join(content, file), text.slice(0, start) + rest);
}

async function firstProject(content: string): Promise<ReadProject> {
  const [project] = (await readContent(content)).projects;
  if (project === undefined) throw new Error(`there is no project in ${content}`);
  return project;
}

/** The last reading that is not among the marked rows. */
function unmarkedReading({ lists, marks }: ReadProject): Understood<Reading> | undefined {
  const rows = marks.rows ?? '';
  return lists.readings.findLast(({ value }) => !rows.includes(`{"id":"${value.id}",`));
}
