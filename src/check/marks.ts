import { marksOf } from '../mark/ledger-marks.ts';
import { parseSecrets } from '../mark/salts.ts';
import type { ReadProject } from '../read/content.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import type { Mark } from '../trust/mark.ts';
import { type NoteKey, parseKey } from '../trust/note-key.ts';
import { verifyMark } from '../trust/sign-mark.ts';
import type { Rule } from './rule.ts';

/** The files of marks are whole, fit one another, and are signed by the project's key where it has one. */
export const marksHold: Rule = ({ project }) => {
  const read = marksOf(project);
  if ('problems' in read) return [...read.problems];
  const key = keyOf(project, read.marks);
  if ('code' in key) return [key];
  const hidden = read.rows.filter(({ privateHash }) => privateHash !== undefined);
  return [
    ...secretProblems(
      project,
      hidden.map(({ serial }) => serial),
    ),
    ...signatureProblems(project, read.marks, key.key),
  ];
};

/** The code of the problem that only a new secret solves. */
export const SECRET_LOST = 'marks/secret-lost';

function secretProblems({ id, marks }: ReadProject, serials: readonly number[]): Problem[] {
  const place = { file: `${id}/marks-secret.txt`, line: 1, column: 1 };
  const secrets = parseSecrets(marks.secret ?? '');
  if (marks.secret !== undefined && secrets === undefined)
    return [
      problemAt(
        place,
        'marks/secret-broken',
        'this is no file of secrets',
        'restore it from a backup',
      ),
    ];
  if (serials.length === 0) return [];
  if (secrets === undefined) return [lostSecret(place, serials.length)];

  const from = secrets[0]?.from ?? 1;
  const unknown = serials.filter((serial) => serial < from).length;
  const message = `the secret of the rows before row ${from} is lost, so the private fields of ${unknown} of them can't be checked`;
  const known = problemAt(place, 'marks/secret-part', message);
  return unknown > 0 ? [{ ...known, level: 'warning' }] : [];
}

function lostSecret(place: { file: string; line: number; column: number }, rows: number): Problem {
  return problemAt(
    place,
    SECRET_LOST,
    `marks-secret.txt is not there: whether private fields of ${rows} marked rows changed can't be told without it, nor what they said shown to anybody`,
    'restore it from a backup; if there is none, "npm run mark -- --new-secret" makes one for the rows to come, and public fields stay proven',
  );
}

function keyOf(
  { id, info }: ReadProject,
  marks: readonly Mark[],
): { key: NoteKey | undefined } | Problem {
  const text = info?.value.markKey;
  const place = info?.raw.placeOf(['markKey']) ?? {
    file: `${id}/project.yaml`,
    line: 1,
    column: 1,
  };
  const signed = marks.some(({ origin, signatures }) =>
    signatures.some(({ name }) => name === origin),
  );
  if (info !== undefined && text === undefined && signed)
    return problemAt(
      place,
      'marks/key-missing',
      'the marks are signed, and project.yaml does not name the key',
      'write "markKey: …" again, with the line that it was',
    );
  if (text === undefined) return { key: undefined };
  const key = parseKey(text);
  const origin = marks[0]?.origin;
  if (key && (origin === undefined || key.name === origin)) return { key };
  const message = key
    ? `markKey: the key goes by "${key.name}", and the marks by "${origin}"`
    : `markKey: "${text.length > 60 ? `${text.slice(0, 59)}…` : text}" is no public key`;
  const fix = 'write the line that "npm run mark -- --new-key …" printed';
  return problemAt(place, 'marks/key', message, fix);
}

function signatureProblems(
  { id, marks: files }: ReadProject,
  marks: readonly Mark[],
  key: NoteKey | undefined,
): Problem[] {
  if (key === undefined) return [];
  const file = `${id}/marks.txt`;
  const lines = (files.marks ?? '').split('\n');
  let signed = false;
  let line = 0;
  return marks.flatMap((mark): Problem[] => {
    line = lines.indexOf(`date ${mark.date}`, line) + 1;
    const checked = verifyMark(mark, key);
    if (checked.holds) signed = true;
    if (checked.holds || (checked.failure === 'not-signed-by-this-key' && !signed)) return [];
    const place = { file, line, column: 1 };
    if (checked.failure === 'signature-differs') {
      const fix = 'restore marks.txt as it was published';
      return [
        problemAt(
          place,
          'marks/signature',
          `the signature of the mark of ${mark.date} is wrong`,
          fix,
        ),
      ];
    }
    const message = `the mark of ${mark.date} is not signed, and one before it is`;
    const unsigned = problemAt(place, 'marks/unsigned', message, 'sign the next with --key');
    return [{ ...unsigned, level: 'warning' }];
  });
}
