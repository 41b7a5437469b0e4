import { describe, expect, test } from 'vitest';
import { recordWords } from '../../src/plan/record-words.ts';
import { wordsOf } from '../../src/words/words.ts';
import { projectOf } from '../book/project-of.ts';
import { plannedPhase, plannedProject, weekly } from './planned-project.ts';

const early = ['strip', 'clean'].map((id, index) =>
  plannedPhase([id, '2025-01-04', '2025-01-18'], {
    finished: index === 0 ? '2025-01-18' : '2025-02-01',
  }),
);
const entry = (title: string, date: string) => ({
  title,
  date,
  phase: 'spindle',
  summary: 'Done.',
});
const entries = [entry('Clean', '2025-02-01'), entry('Still at it', '2025-02-08')];

/** After two phases as planned at four hours a Saturday: a spindle that takes some hours on each Saturday from 8 February on. */
function afterSpindle(hours: readonly string[], finished: string) {
  return projectOf({
    project: { week: { saturday: '4:00' } },
    lists: {
      phases: [...early, plannedPhase(['spindle', '2025-02-02', '2025-02-22'], { finished })],
      hours: [
        ...weekly('strip', '2025-01-04', ['4:00', '4:00', '2:00']),
        ...weekly('clean', '2025-01-25', ['4:00', '6:00']),
        ...weekly('spindle', '2025-02-08', hours),
      ],
    },
    entries,
  });
}

describe('how past forecasts came true, in words', () => {
  test('names the phase that passed its forecasts, and how many times its plan it took', () => {
    const project = afterSpindle(Array(10).fill('4:00'), '2025-04-12');
    const [counts, why] = recordWords(project, wordsOf('en'));
    expect(counts).toMatch(/Held: 0, 0 %; passed: 4; beaten: 0\.$/);
    expect(why).toBe(
      'Passed most often (2): Phase spindle, which took 4.00 times its planned hours.',
    );
  });

  test('names the phase that beat them, its pace beside the one it was forecast at', () => {
    // Forecast on 1 February from four hours a week in all five weeks but the last, with six; it took twelve on its one Saturday.
    const project = afterSpindle(['12:00'], '2025-02-08');
    expect(recordWords(project, wordsOf('en')).at(-1)).toBe(
      'Beaten most often (1): Phase spindle, forecast at a pace of 4:00 h a week, where 12:00 h came.',
    );
  });

  test('says nothing before a forecast phase is finished', () => {
    expect(recordWords(plannedProject(), wordsOf('en'))).toEqual([]);
  });
});
