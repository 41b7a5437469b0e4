import { describe, expect, test } from 'vitest';
import type { Entry } from '../../src/book/types.ts';
import type { Part, Site } from '../../src/model/kinds.ts';
import { addressesOf } from '../../src/publish/address.ts';
import { citation, entryCitation, partCitation } from '../../src/publish/citation.ts';
import type { Written } from '../book/project-of.ts';
import { figuresIn, measuredProject } from '../measure/measured-project.ts';

const site = { title: 'A shed', builder: 'Ines Marlow' } as Site;

function cite(reading: Written | undefined, language = 'en-GB'): string {
  const project = measuredProject({
    specs: {
      play: { name: 'Play of the ram' },
      half: { name: 'Half of it', formula: 'p/2', inputs: { p: 'play' } },
    },
    readings: reading ? [{ spec: 'play', ...reading }] : [],
    instruments: [{ id: 'dial', 'stated-error': '0.02 mm' }],
  });
  const to = addressesOf('https://shed.example/');
  const context = { to, site, language };
  return citation(figuresIn(project, 'play'), project, context);
}

describe('citation', () => {
  test('names builder, machine, spec, value with U, day and address', () => {
    expect(cite({ values: '0.41', instrument: 'dial' })).toBe(
      'Ines Marlow, 1958 Hallin 3: Play of the ram, 0.410 ± 0.023 mm (U at 95 %), measured 1 March 2025. A shed, https://shed.example/drill-press/specs/play/',
    );
  });

  test('does not speak of a U that is not known', () => {
    expect(cite({ values: '0.41' })).toContain('0.41 mm (uncertainty not known), measured');
  });

  test('says that nothing was measured yet', () => {
    expect(cite(undefined)).toContain('Play of the ram, not yet measured. A shed, ');
  });

  test('is in the language of the pages', () => {
    expect(cite({ values: '0.41', instrument: 'dial' }, 'de-DE')).toBe(
      'Ines Marlow, 1958 Hallin 3: Play of the ram, 0,410 ± 0,023 mm (U bei 95 %), gemessen am 1. März 2025. A shed, https://shed.example/drill-press/specs/play/',
    );
    expect(cite(undefined, 'de-DE')).toContain('Play of the ram, noch nicht gemessen. A shed, ');
  });

  test('has no spaces that break a copied line, in any language', () => {
    const text = cite({ values: '41000.5', instrument: 'dial' }, 'fr');
    expect(text).toContain('41 000,500 ± 0,023 mm');
    expect(text).not.toMatch(/[\u00a0\u202f]/);
  });
});

test('a value that was worked out is called calculated, and stands in parentheses', () => {
  const project = measuredProject({
    specs: { play: {}, half: { formula: 'p/2', inputs: { p: 'play' } } },
    readings: [{ spec: 'play', values: '0.4', instrument: 'dial' }],
    instruments: [{ id: 'dial', 'stated-error': '0.02 mm' }],
  });
  const to = addressesOf('https://shed.example/');
  const text = citation(figuresIn(project, 'half'), project, { to, site, language: 'en-GB' });
  expect(text).toContain('half, (0.200 ± 0.011 mm) (U at 95 %), calculated 1 March 2025.');
});

describe('a line to cite', () => {
  const project = measuredProject({
    specs: { play: {}, half: { formula: 'p/2', inputs: { p: 'play' } } },
    readings: [{ spec: 'play', values: '0.4', instrument: 'dial' }],
    instruments: [{ id: 'dial', 'stated-error': '0.02 mm' }],
  });
  const context = { to: addressesOf('https://shed.example/'), site, language: 'en-GB' };

  test('an entry has its title and day', () => {
    const entry = { title: 'The ram slides', date: '2025-04-13', slug: 'ram' } as Entry;
    expect(entryCitation(entry, project, context)).toBe(
      'Ines Marlow, 1958 Hallin 3: The ram slides, 13 April 2025. A shed, https://shed.example/drill-press/log/ram/',
    );
  });

  test('a part has the day that its page is as of', () => {
    expect(partCitation({ id: 'gib', name: 'Gib' } as Part, project, context)).toBe(
      'Ines Marlow, 1958 Hallin 3: Gib, as of 1 March 2025. A shed, https://shed.example/drill-press/parts/gib/',
    );
  });
});
