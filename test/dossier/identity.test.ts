import { describe, expect, it } from 'vitest';
import { maskNumber } from '../../src/dossier/identity.ts';

describe('a masked number', () => {
  it('ends with its last four characters', () => {
    expect(maskNumber('FL11-66-20417')).toBe('… 0417');
    expect(maskNumber('12345678')).toBe('… 5678');
  });

  it('never shows more than half of a short one', () => {
    expect(maskNumber('1234567')).toBe('… 567');
    expect(maskNumber('12')).toBe('… 2');
    expect(maskNumber('7')).toBe('… ');
  });
});
