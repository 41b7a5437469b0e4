import { describe, expect, test } from 'vitest';
import type { Card } from '../../src/card/draw-card.ts';
import { specCard } from '../../src/card/spec-card.ts';
import type { Written } from '../book/project-of.ts';
import { figuresIn, measuredProject } from '../measure/measured-project.ts';

const dial = { id: 'dial', 'stated-error': '0.02 mm' };

function cardOf(spec: Written, ...readings: readonly Written[]): Card {
  return cardIn('en-GB', spec, ...readings);
}

function cardIn(language: string, spec: Written, ...readings: readonly Written[]): Card {
  const project = measuredProject({
    specs: { play: { name: 'Play of the ram', ...spec } },
    readings: readings.map((reading) => ({ spec: 'play', instrument: 'dial', ...reading })),
    instruments: [dial],
  });
  const reader = { owner: 'Ines Marlow', language };
  const card = specCard(figuresIn(project, 'play'), project, reader);
  return JSON.parse(JSON.stringify(card).replaceAll('\u00a0', ' ')) as Card;
}

describe('the card of a spec', () => {
  test('says machine, name, latest value with U, change and verdict', () => {
    const card = cardOf(
      { max: '0.1 mm' },
      { values: '0.41' },
      { values: '0.06', state: 'after', date: '2025-04-01' },
    );
    expect(card).toEqual({
      over: '1958 Hallin 3',
      title: 'Play of the ram',
      value: '0.060 ± 0.023 mm',
      lines: [
        'before 0.410 ± 0.023 mm, after 0.060 ± 0.023 mm: changed',
        'meets its limits, uncertainty counted',
      ],
      block: [
        ['Owner', 'Ines Marlow'],
        ['Document', 'Measured spec'],
        ['Date', '1 Apr 2025'],
        ['Uncertainty', 'U at 95 %'],
      ],
    });
  });

  test.each([
    ['0.41', 'does not meet its limits, uncertainty counted'],
    ['0.1', 'undecided against its limits, uncertainty counted'],
  ])('of %s mm says that it %s', (values, line) => {
    expect(cardOf({ max: '0.1 mm' }, { values }).lines).toEqual([line]);
  });

  test('claims no U that is not known, and no value that was not read', () => {
    const bare = cardOf({ max: '0.1 mm' }, { values: '0.41', instrument: 'rule' });
    expect([bare.value, bare.lines, bare.block.at(-1)]).toEqual([
      '0.41 mm',
      [],
      ['Uncertainty', 'not known'],
    ]);
    expect(cardOf({})).toMatchObject({ value: 'not yet measured', lines: [] });
  });

  test('speaks German on pages in German', () => {
    const card = cardIn('de-DE', { max: '0.1 mm' }, { values: '0.41' });
    expect(card).toMatchObject({
      value: '0,410 ± 0,023 mm',
      lines: ['Grenzen nicht eingehalten, mit Messunsicherheit'],
      block: [
        ['Eigentümer', 'Ines Marlow'],
        ['Dokumentenart', 'Gemessener Kennwert'],
        ['Datum', '1. März 2025'],
        ['Messunsicherheit', 'U bei 95 %'],
      ],
    });
    expect(cardIn('de-DE', {}).value).toBe('noch nicht gemessen');
  });
});
