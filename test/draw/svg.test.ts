import { describe, expect, test } from 'vitest';
import { drawShare } from '../../src/draw/share.ts';
import { across, fluidDrawing, node, writeSvg } from '../../src/draw/svg.ts';

describe('writeSvg', () => {
  test('writes attributes in their order and closes what is empty', () => {
    expect(writeSvg(node('line', { x1: '0%', y1: 4, class: 'wide' }))).toBe(
      '<line x1="0%" y1="4" class="wide"/>',
    );
  });

  test('leaves out an attribute that is absent', () => {
    expect(writeSvg(node('line', { x1: undefined, y1: 0 }))).toBe('<line y1="0"/>');
  });

  test('nests pieces and texts', () => {
    expect(writeSvg(node('g', {}, node('text', {}, 'a'), 'b'))).toBe('<g><text>a</text>b</g>');
  });

  test('lets no text and no attribute out of its place', () => {
    expect(writeSvg(node('text', { 'aria-label': '"><b>' }, '1 < 2 & "3"'))).toBe(
      '<text aria-label="&quot;&gt;&lt;b&gt;">1 &lt; 2 &amp; &quot;3&quot;</text>',
    );
  });
});

test('a drawing is as wide as its place and says what it shows', () => {
  const { title, root } = fluidDrawing(40, 'Load & play', []);
  expect(title).toBe('Load & play');
  expect(writeSvg(root)).toBe(
    '<svg width="100%" height="40" role="img" aria-label="Load &amp; play" class="drawing"/>',
  );
});

test('across keeps three decimals at most', () => {
  expect(across(100 / 3)).toBe('33.333%');
  expect(across(50)).toBe('50%');
  expect(across(0.00001)).toBe('0%');
});

describe('drawShare', () => {
  const wideLine = (part: number, whole: number) =>
    /x2="([\d.]+%)" y1="7" y2="7" class="wide"/.exec(writeSvg(drawShare(part, whole)))?.[1];

  test('is as long as the part is of the whole', () => {
    expect(wideLine(1, 3)).toBe('33.333%');
    expect(wideLine(3, 3)).toBe('100%');
  });

  test('draws nothing for credits, and never beyond the whole', () => {
    expect(wideLine(-1, 3)).toBe('0%');
    expect(wideLine(1, 0)).toBe('0%');
    expect(wideLine(4, 3)).toBe('100%');
  });
});
