import { describe, expect, it } from 'vitest';
import { correctionLines } from '../../src/dossier/correction-lines.ts';
import { openPoints } from '../../src/dossier/open-points.ts';
import { sectionsOf } from '../../src/dossier/sections.ts';
import { wordsOf } from '../../src/words/words.ts';
import { projectOf, type Written } from '../book/project-of.ts';

const lists = {
  sources: [
    { id: 'base', kind: 'base', name: 'The press' },
    { id: 'spare', kind: 'donor', name: 'The spare press' },
  ],
  phases: [
    {
      ...{ id: 'strip', name: 'Stripping', summary: 'All apart.', 'planned-hours': '2:00' },
      ...{ 'planned-start': '2025-03-01', 'planned-finish': '2025-03-02' },
      finished: '2025-03-02',
    },
    {
      ...{ id: 'build', name: 'Building', summary: 'All together.', 'planned-hours': '2:00' },
      ...{ 'planned-start': '2025-03-03', 'planned-finish': '2025-03-04' },
    },
  ],
  specs: [
    specOf('play', { max: '0.10 mm' }),
    specOf('wear', { max: '0.30 mm' }),
    specOf('gap', { max: '0.30 mm' }),
    specOf('lift', {}),
    specOf('runout', { target: '0.10 mm', better: 'lower' }),
  ],
  instruments: [
    {
      id: 'dial',
      name: 'Dial',
      quantity: 'length',
      'certificate-u': '0.02 mm',
      'certificate-k': '2',
    },
    { id: 'rule', name: 'Rule', quantity: 'length' },
  ],
  readings: [
    readingOf('r-1', 'play', '0.20'),
    readingOf('r-2', 'wear', '0.31'),
    readingOf('r-3', 'gap', '0.10', 'rule'),
    readingOf('r-4', 'runout', '0.40'),
  ],
  parts: [
    {
      id: 'nut',
      name: 'Nut',
      system: 'screw',
      source: 'spare',
      wanted: '2025-03-02',
      phase: 'build',
    },
    { id: 'screw', name: 'Screw', system: 'screw', source: 'base', fitted: '2025-03-05' },
  ],
  waits: [
    {
      ...{
        id: 'w-1',
        date: '2025-03-03',
        phase: 'build',
        for: 'weather',
        what: 'No frost for paint',
      },
      expected: '2025-03-04',
    },
  ],
  hours: [
    {
      id: 'h-1',
      date: '2025-03-01',
      hours: '2:00',
      phase: 'strip',
      work: 'cleaning',
      what: 'Apart',
    },
    {
      ...{ id: 'h-2', date: '2025-03-01', hours: '1:00', phase: 'strip', work: 'cleaning' },
      ...{ what: 'Apart', recorded: '2025-03-05', corrects: 'h-1', because: 'Clock misread' },
    },
  ],
  costs: [
    { id: 'c-1', date: '2025-03-01', amount: '10.00', category: 'part', what: 'A nut' },
    {
      ...{ id: 'c-2', date: '2025-03-01', amount: '12.00', category: 'part', what: 'A nut' },
      ...{ recorded: '2025-03-05', corrects: 'c-1', because: 'Misread' },
    },
  ],
};

function specOf(id: string, limits: Written): Written {
  const about = 'How far it moves.';
  return { id, name: id, about, quantity: 'length', unit: 'mm', system: 'screw', ...limits };
}

function readingOf(id: string, spec: string, values: string, instrument = 'dial'): Written {
  return { id, spec, date: '2025-03-05', state: 'final', values, unit: 'mm', instrument };
}

const project = projectOf({ lists });

describe('open points', () => {
  it('are phases, specs without a good verdict, wanted parts and waits, and nothing that is settled', () => {
    const told = openPoints(project.now, wordsOf('en')).map(
      ({ id, why, since }) => `${id}: ${why}, ${since}`,
    );
    expect(told).toEqual([
      'build: phase not started, undefined',
      'play: does not meet its limits, 2025-03-05',
      'wear: undecided: the limit lies inside ± U, 2025-03-05',
      'gap: no verdict, since its uncertainty is not known, 2025-03-05',
      'lift: not measured, undefined',
      'runout: its target is not reached, 2025-03-05',
      'nut: wanted, 0 searches so far, 2025-03-02',
      'w-1: waited for, overdue, 2025-03-03',
    ]);
  });
});

describe('open points in German', () => {
  it('say why in German, with nothing of the English left', () => {
    const told = openPoints(project.now, wordsOf('de')).map(({ id, why }) => `${id}: ${why}`);
    expect(told).toEqual([
      'build: Phase nicht begonnen',
      'play: hält seine Grenzen nicht ein',
      'wear: unentschieden: Die Grenze liegt innerhalb von ± U',
      'gap: kein Urteil, da die Messunsicherheit nicht bekannt ist',
      'lift: nicht gemessen',
      'runout: das Ziel ist nicht erreicht',
      'nut: gesucht, bisher 0 Suchen',
      'w-1: wird erwartet, überfällig',
    ]);
  });
});

describe('corrections in a dossier', () => {
  const told = (costs: string) =>
    correctionLines(projectOf({ project: { dossier: { costs } }, lists }), 'en-GB').map(
      ({ correction, before, after, effect }) =>
        `${correction.old}: ${before}; ${after}; ${effect}`,
    );

  it('say what counted, what counts, and by how much that differs', () => {
    expect(told('totals')).toEqual([
      'c-1: £10.00, A nut; £12.00, A nut; £2.00',
      'h-1: 2:00 h, Apart; 1:00 h, Apart; −1:00 h',
    ]);
  });

  it('say nothing of money where the dossier tells none', () => {
    expect(told('none')).toEqual([
      'c-1: a row about money; a row about money; –',
      'h-1: 2:00 h, Apart; 1:00 h, Apart; −1:00 h',
    ]);
  });
});

describe('the sections of a dossier', () => {
  const keys = (given: Written) =>
    sectionsOf(projectOf({ project: given, lists }).now).map(
      ({ number, key }) => `${number} ${key}`,
    );

  it('are numbered one after the other, and only those there is something for', () => {
    expect(keys({}).join(', ')).toBe(
      '1 machine, 2 work, 3 parts, 4 specs, 5 money, 6 donors, 7 corrections, 8 instruments, 9 open, 10 hazards, 11 references',
    );
  });

  it('have no money and no donor account where costs are none', () => {
    expect(keys({ dossier: { costs: 'none' } }).join(', ')).not.toMatch(/money|donors/);
  });

  it('have an identity page once there is something on it, unless it is left out', () => {
    const identity = { keeps: 'base' };
    expect(keys({ identity })).toContain('2 identity');
    expect(keys({ identity, dossier: { identity: 'none' } })).not.toContain('2 identity');
  });
});
