import { describe, expect, test } from 'vitest';
import { showProgress } from '../../src/photo/progress.ts';

/** What is said while so many photos take so many milliseconds each. */
function saidOn(isTerminal: boolean, total: number, each: number): string[] {
  const said: string[] = [];
  let now = 0;
  const listener = { isTerminal, write: (text: string) => said.push(text), now: () => now };
  const progress = showProgress('Photos', total, listener);
  for (let done = 0; done < total; done++) {
    now += each;
    progress.step();
  }
  progress.end();
  return said;
}

describe('showProgress', () => {
  test('draws a bar with rate and time left on a terminal', () => {
    expect(saidOn(true, 4, 500)).toEqual([
      '\r[######..................] Photos 1 of 4, 2.0 a second, 0:02 left\u001b[K',
      '\r[############............] Photos 2 of 4, 2.0 a second, 0:01 left\u001b[K',
      '\r[##################......] Photos 3 of 4, 2.0 a second, 0:01 left\u001b[K',
      '\r[########################] Photos 4 of 4, 2.0 a second\u001b[K',
      '\n',
    ]);
  });

  test('writes a plain line every ten seconds elsewhere', () => {
    expect(saidOn(false, 30, 1000)).toEqual([
      'Photos 10 of 30, 1.0 a second, 0:20 left\n',
      'Photos 20 of 30, 1.0 a second, 0:10 left\n',
      'Photos 30 of 30, 1.0 a second\n',
    ]);
  });

  test('says nothing when there is nothing to do', () => {
    expect([...saidOn(true, 0, 1), ...saidOn(false, 0, 1)]).toEqual([]);
  });
});
