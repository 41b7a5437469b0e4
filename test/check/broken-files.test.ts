import { describe, expect, it } from 'vitest';
import { check } from './content-folder.ts';

const ENTRY = 'press/entries/2025-04-13-the-ram-slides.mdx';

describe('a file that can’t be read', () => {
  it('says where its YAML breaks', async () => {
    const found = await check({
      'press/phases.yaml': ['summary: Everything comes', 'summary: All: comes'],
    });
    expect(found).toMatchInlineSnapshot(`
      "press/phases.yaml:3:12
        broken YAML: Nested mappings are not allowed in compact mappings
        → put quotes around a text that contains ": ""
    `);
  });

  it('says which key of its YAML stands twice', async () => {
    const found = await check({
      'press/ledger/parts.yaml': ['system: screw', 'system: screw\n  name: Nut'],
    });
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/parts.yaml:10:3
        broken YAML: Map keys must be unique
        → remove one of the two"
    `);
  });

  it('says which cell of its CSV is never closed', async () => {
    const found = await check({ 'press/ledger/hours.csv': ['Screw out', '"Screw out'] });
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/hours.csv:3:47
        a quoted cell is never closed
        → end the cell with ""
    `);
  });

  it('says which row of its CSV has too many cells', async () => {
    const found = await check({
      'press/ledger/hours.csv': ['Screw out', 'Screw, nut and all out'],
    });
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/hours.csv:3:1
        8 cells where the header has 7
        → put quotes around a cell that contains a separator"
    `);
  });

  it('says where its MDX breaks', async () => {
    expect(await check({ [ENTRY]: ['<Tally />', 'Play is <0.1 mm'] })).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:9
        broken MDX: unexpected character after \`<\`, expected a valid JSX tag (note: to create a link in MDX, use \`[text](url)\`)
        → write &lt; for a "less than" in text, and close every <Name … />"
    `);
    expect(
      await check({ [ENTRY]: ['<Tally />', 'See <AtTime at="4:32">the ram'] }),
    ).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:5
        broken MDX: expected a closing tag for \`<AtTime>\` (13:5) before the end of \`paragraph\`
        → close the component: <Name … />"
    `);
    expect(await check({ [ENTRY]: ['<Tally />', 'A {brace'] })).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:3
        broken MDX: unexpected end of file in expression, expected a corresponding closing brace for \`{\`
        → write \\{ for a brace in text, and close every {…}"
    `);
  });

  it('says that its MDX runs a program', async () => {
    expect(
      await check({ [ENTRY]: ['<Tally />', 'import x from "./x.js"\n\nSum: {1 + 2}'] }),
    ).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:1
        an entry imports and exports nothing
        → remove the line; every component is there already
      press/entries/2025-04-13-the-ram-slides.mdx:15:6
        the expression {1 + 2} is not run here
        → write the text itself, or \\{ for a brace"
    `);
  });

  it('says that its front matter is missing or broken', async () => {
    expect(await check({ [ENTRY]: ['---\ntitle', '--\ntitle'] })).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:1:1
        the entry has no front matter
        → start the file with "---", title, date, phase, summary, "---""
    `);
    expect(await check({ [ENTRY]: ['title: The', 'title: It: the'] })).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:2:8
        broken YAML: Nested mappings are not allowed in compact mappings
        → put quotes around a text that contains ": ""
    `);
    expect(await check({ [ENTRY]: ['summary: The', 'sumary: The'] })).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:5:1
        unknown field "sumary"
        → did you mean "summary"?"
    `);
  });

  it('says which byte is not UTF-8', async () => {
    const bytes = Buffer.from(
      'id,date,part,result\ns-001,2025-03-05,gib,none\ns-002,2025-03-06,gib,\xe9',
      'latin1',
    );
    expect(await check({ 'press/ledger/searches.csv': bytes })).toMatchInlineSnapshot(`
      "press/ledger/searches.csv:3:22
        the file is not UTF-8: byte 0xE9 fits no character
        → save the file as "UTF-8" (in a spreadsheet: "CSV UTF-8")"
    `);
  });
});

describe('a folder', () => {
  it('needs its site.yaml, a project, and that project’s project.yaml', async () => {
    expect(await check({ 'site.yaml': undefined })).toMatchInlineSnapshot(`
      "site.yaml:1:1
        there is no site.yaml
        → write one with title, address, language and builder"
    `);
    expect(await check({ 'press/project.yaml': undefined })).toMatchInlineSnapshot(`
      "press/project.yaml:1:1
        the project "press" has no project.yaml
        → write one with name, summary, machine, timeZone, work and people"
    `);
  });

  it('of a project holds nothing that would be passed over in silence', async () => {
    const found = await check({
      'press/ledger/cost.csv': 'id\n',
      'press/ledger/hours.yml': '[]\n',
      'press/ledger/parts.xlsx': '',
      'press/entry/x.mdx': '',
      'press/entries/2025-04-20-gib.md': '',
      'Hand Saw/project.yaml': '',
      'search/project.yaml': '',
    });
    expect(found).toMatchInlineSnapshot(`
      "Hand Saw:1:1
        the folder "Hand Saw" can't be part of an address
        → use lower-case letters, digits and hyphens
      press/entries/2025-04-20-gib.md:1:1
        "2025-04-20-gib.md" is no entry
        → name it "2025-04-20-gib.mdx", or move it elsewhere
      press/entry:1:1
        the folder "entry" is not read
        → one of: ledger, entries, photos, receipts
      press/ledger/cost.csv:1:1
        "cost.csv" is no file of a project
        → did you mean "costs"?
      press/ledger/hours.yml:1:1
        "hours.yml" is no file of a project
        → name it "hours.yaml"
      press/ledger/parts.xlsx:1:1
        "parts.xlsx" is no file of a project
        → save it as .yaml or .csv
      search:1:1
        the folder "search" would have an address that the site uses itself
        → give it another name, like "my-search""
    `);
  });
});
