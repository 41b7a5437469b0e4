import { describe, expect, it } from 'vitest';
import { check } from './content-folder.ts';

const PROJECT = 'press/project.yaml';
const adding = (text: string) =>
  check({ [PROJECT]: ['work: [clean, fit]', `work: [clean, fit]\n${text}`] });

describe('the identity of a machine', () => {
  it('may be that of the base or of a donor, with numbers and papers of either', async () => {
    const identity = `identity:
  keeps: press
  marks:
    - what: frame number
      source: press
      value: W3-1931-204
      released: true
    - what: plate
      source: spare-press
  papers:
    - what: bill of sale
      source: spare-press
      held: true`;
    expect(await adding(identity)).toBe('');
  });

  it('is not kept from a source that is not there', async () => {
    expect(await adding('identity:\n  keeps: pres')).toMatchInlineSnapshot(`
      "press/project.yaml:12:10
        unknown source "pres"
        → did you mean "press"?"
    `);
  });

  it('is not kept from what was bought as parts', async () => {
    const found = await check({
      [PROJECT]: ['work: [clean, fit]', 'work: [clean, fit]\nidentity:\n  keeps: shop'],
      'press/sources.yaml': ['- id: press', '- id: shop\n  kind: new\n  name: Bought\n- id: press'],
    });
    expect(found).toMatchInlineSnapshot(`
      "press/project.yaml:12:10
        identity.keeps: "shop" is no machine (its kind is "new")
        → one of: press, spare-press"
    `);
  });

  it('releases no number that was not written down', async () => {
    const identity =
      'identity:\n  keeps: press\n  marks:\n    - what: plate\n      released: true\n  papers: []';
    expect(await adding(identity)).toMatchInlineSnapshot(`
      "press/project.yaml:15:17
        identity.marks.0: "released: true" has no value beside it
        → add value: … with the number as it is stamped, or write released: false"
    `);
  });

  it('is never published whole', async () => {
    expect(await adding('dossier:\n  identity: full')).toMatchInlineSnapshot(`
      "press/project.yaml:12:13
        dossier.identity: "full" would publish whole numbers
        → write masked; "npm run dossier -- --identity full" prints them for you alone"
    `);
    expect(await adding('dossier:\n  identity: half')).toMatchInlineSnapshot(`
      "press/project.yaml:12:13
        dossier.identity: "half" is not one of the words known here
        → write masked or none"
    `);
  });
});

describe('a dossier', () => {
  it('tells of money as much as one of four words says', async () => {
    expect(await adding('dossier:\n  costs: rows')).toBe('');
    expect(await adding('dossier:\n  costs: some')).toMatchInlineSnapshot(`
      "press/project.yaml:12:10
        dossier.costs: "some" is not one of the words known here
        → one of: none, totals, categories, rows"
    `);
  });
});
