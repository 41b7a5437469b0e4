import { describe, expect, it } from 'vitest';
import { appendedMark, markText, printMark, printMarks } from '../../src/trust/mark.ts';
import { parseMarks } from '../../src/trust/parse-marks.ts';
import { marksOf, rowTexts } from './small-ledger.ts';

// The root is that of a published example of a checkpoint: C2SP tlog-checkpoint.
const ROOT = 'CsUYapGGPo4dkMgIAUqom/Xajj7h2fB2MPA3j2jxq2I=';
const SIGNATURE =
  '— example.org/lapwing Az3grlgtzPICa5OS8npVmf1Myq/5IZniMp+ZJurmRDeOoRDe4URYN7u5/Zhcyv2q1gGzGku9nTo+zyWE+xeMcTOAYQ8=';
const first = `example.org/lapwing\n180\n${ROOT}\ndate 2025-03-08\n`;
const second = `example.org/lapwing\n240\n${ROOT}\ndate 2025-06-01\n`;

describe('marks.txt', () => {
  it('holds a mark as origin, rows, root and date, and its signatures after a blank line', () => {
    const { marks, problems } = parseMarks(`${first}\n${SIGNATURE}\n\n${second}`);
    expect(problems).toEqual([]);
    expect(marks).toEqual([
      {
        origin: 'example.org/lapwing',
        size: 180,
        root: Buffer.from(ROOT, 'base64'),
        date: '2025-03-08',
        signatures: [
          { name: 'example.org/lapwing', keyId: '033de0ae', signature: expect.any(Uint8Array) },
        ],
      },
      expect.objectContaining({ size: 240, date: '2025-06-01', signatures: [] }),
    ]);
    expect(marks[0]?.signatures[0]?.signature.length).toBe(64);
  });

  it('is printed back as it was', () => {
    for (const text of ['', first, `${first}\n${second}`, `${first}\n${SIGNATURE}\n${SIGNATURE}\n`])
      expect(printMarks(parseMarks(text).marks)).toBe(text);
  });

  it('grows at its end only', () => {
    const [a, b] = marksOf(rowTexts(9), [4, 9]);
    if (!a || !b) throw new Error('there are two marks');
    expect(appendedMark(a, []) + appendedMark(b, [a])).toBe(printMarks([a, b]));
  });

  it('has a mark whose signed text ends before the blank line', () => {
    const [mark] = parseMarks(`${first}\n${SIGNATURE}\n`).marks;
    expect(mark && markText(mark)).toBe(first);
    expect(mark && printMark(mark)).toBe(`${first}\n${SIGNATURE}\n`);
  });

  it('has no marks when it is empty', () => {
    expect(parseMarks('')).toEqual({ marks: [], problems: [] });
  });
});

describe('in marks.txt it is a problem', () => {
  const edited = (from: string, to: string) => `${first}\n${second}`.replace(from, to);
  it.each([
    ['when it has lost its last line', first.slice(0, -16), 3, 'marks/cut'],
    ['when the end of the last line is missing', first.slice(0, -1), 4, 'marks/cut'],
    ['when line ends are those of Windows', first.replaceAll('\n', '\r\n'), 1, 'marks/line-end'],
    ['when it is one blank line', '\n', 1, 'marks/blank'],
    ['when it starts with a blank line', `\n${first}`, 1, 'marks/blank'],
    ['when it ends with a blank line', `${first}\n`, 5, 'marks/blank'],
    ['when two blank lines part the marks', edited('\n\n', '\n\n\n'), 6, 'marks/blank'],
    ['when three blank lines part the marks', edited('\n\n', '\n\n\n\n'), 6, 'marks/blank'],
    ['when no blank line parts the marks', edited('\n\n', '\n'), 5, 'marks/line'],
    ['when the origin has a space', edited('example.org', 'example org'), 1, 'marks/origin'],
    ['when the origin has a plus', edited('lapwing', 'lap+wing'), 1, 'marks/origin'],
    ['when the origin is another later', `${first}\nx${second}`, 6, 'marks/origin'],
    ['when the number of rows is none', edited('180', 'many'), 2, 'marks/size'],
    ['when the number has a zero before it', edited('180', '0180'), 2, 'marks/size'],
    ['when there are no rows', edited('180', '0'), 2, 'marks/size'],
    ['when there are more rows than can be', edited('240', '9'.repeat(16)), 7, 'marks/size'],
    ['when a later mark has fewer rows', edited('240', '179'), 7, 'marks/size'],
    ['when a later mark has as many rows', edited('240', '180'), 7, 'marks/size'],
    ['when the root is too short', edited(ROOT, 'CsUYapGG'), 3, 'marks/root'],
    ['when the root is no base64', edited(ROOT, `*${ROOT.slice(1)}`), 3, 'marks/root'],
    ['when the root has spare bits', edited('q2I=', 'q2J='), 3, 'marks/root'],
    ['when the date does not exist', edited('03-08', '02-30'), 4, 'marks/date'],
    ['when the date has no word before it', edited('date ', ''), 4, 'marks/date'],
    ['when the date goes back', edited('2025-06-01', '2025-03-07'), 9, 'marks/date'],
    ['when a line too many follows', edited('03-08\n', '03-08\nby Tamsin\n'), 5, 'marks/line'],
    ['when a signature stands alone', `${SIGNATURE}\n`, 1, 'marks/signature'],
    ['when a signature is cut', `${first}\n${SIGNATURE.slice(0, -3)}\n`, 6, 'marks/signature'],
    ['when text stands among signatures', `${first}\n${SIGNATURE}\nx\n`, 7, 'marks/signature'],
    ['when signatures are parted', `${first}\n${SIGNATURE}\n\n${SIGNATURE}\n`, 7, 'marks/blank'],
  ])('%s', (_, text, line, code) => {
    const { problems } = parseMarks(text);
    expect(problems.map((problem) => [problem.line, problem.code])).toContainEqual([line, code]);
    expect(problems.every(({ message, fix }) => message !== '' && fix !== '')).toBe(true);
  });

  it('which says what stood there and what to do', () => {
    expect(parseMarks(edited('240', '17')).problems).toEqual([
      {
        line: 7,
        code: 'marks/size',
        message: '17 rows is not more than 180 before',
        fix: 'restore marks.txt as it was published; only the mark command adds to it, at its end',
      },
    ]);
  });
});
