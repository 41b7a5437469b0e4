import { describe, expect, it } from 'vitest';
import { nearest, suggest } from '../../src/read/nearest.ts';

describe('the nearest known word', () => {
  const phases = ['survey', 'teardown', 'frame', 'rebuild'];

  it('is found over a letter left out, added, changed, or two swapped', () => {
    expect(nearest('teardwn', phases)).toBe('teardown');
    expect(nearest('teardowwn', phases)).toBe('teardown');
    expect(nearest('teatdown', phases)).toBe('teardown');
    expect(nearest('teadrown', phases)).toBe('teardown');
  });

  it('is found whatever the case', () => {
    expect(nearest('Rebuild', phases)).toBe('rebuild');
  });

  it('differs by a third of the word at most', () => {
    // Nine letters: three may differ.
    expect(nearest('tearabcnn', ['teardownn'])).toBe('teardownn');
    expect(nearest('teabcdenn', ['teardownn'])).toBeUndefined();
  });

  it('may differ by one letter however short it is', () => {
    expect(nearest('gb', ['gib', 'nut'])).toBe('gib');
    expect(nearest('xy', ['gib', 'nut'])).toBeUndefined();
  });

  it('is the first of two that are equally near, and a nearer one wins', () => {
    expect(nearest('h-003', ['h-001', 'h-002'])).toBe('h-001');
    expect(nearest('frames', ['framing', 'frame'])).toBe('frame');
  });
});

describe('a suggestion', () => {
  it('is the whole choice when nothing is near and the choice is short', () => {
    expect(suggest('zzzz', ['base', 'donor'])).toBe('one of: base, donor');
  });

  it('is none when nothing is near and the choice is long or empty', () => {
    const long = Array.from({ length: 13 }, (_, index) => `long-name-${index}`);
    expect(suggest('zzzz', long)).toBeUndefined();
    expect(suggest('zzzz', [])).toBeUndefined();
  });
});
