import { relative } from 'node:path';
import { styleText } from 'node:util';
import type { Mended } from '../mend/mend-text.ts';
import { type Problem, visible } from '../read/problem.ts';

/** Path of a content file as a terminal can open it, from where the command runs. */
function shownPath(contentDir: string, file: string): string {
  return visible(relative(process.cwd(), `${contentDir}/${file}`));
}

/** Problems for people: the place on a line of its own, what is wrong, what to type. */
export function describeProblems(problems: readonly Problem[], contentDir: string): string {
  return problems
    .map(({ level, file, line, column, message, fix }) => {
      const place = styleText('bold', `${shownPath(contentDir, file)}:${line}:${column}`);
      const kind = level === 'warning' ? styleText('yellow', ' (warning)') : '';
      return `${place}${kind}\n  ${message}${fix ? `\n  ${styleText('green', '→')} ${fix.replaceAll('\n', '\n    ')}` : ''}\n`;
    })
    .join('\n');
}

/** Mends for people: the place, what stood there and what stands there now. */
export function describeMends(mended: readonly Mended[], contentDir: string): string {
  return mended
    .map(({ file, line, column, from, to }) => {
      const place = styleText('bold', `${shownPath(contentDir, file)}:${line}:${column}`);
      return `${place}  ${visible(from)} ${styleText('green', '→')} ${visible(to)}\n`;
    })
    .join('');
}

/** `3 problems and 2 warnings in 4 files`. */
export function countProblems(problems: readonly Problem[]): string {
  const errors = problems.filter(({ level }) => level === 'error').length;
  const warnings = problems.length - errors;
  const files = new Set(problems.map(({ file }) => file)).size;
  const parts = [
    errors > 0 || warnings === 0 ? plural(errors, 'problem') : '',
    warnings > 0 ? plural(warnings, 'warning') : '',
  ];
  return `${parts.filter(Boolean).join(' and ')}${files > 0 ? ` in ${plural(files, 'file')}` : ''}`;
}

/** A count and its noun. */
export function plural(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** Problems for other programs. */
export function problemsAsJson(problems: readonly Problem[]): string {
  const errors = problems.filter(({ level }) => level === 'error').length;
  return JSON.stringify({ errors, warnings: problems.length - errors, problems }, null, 2);
}
