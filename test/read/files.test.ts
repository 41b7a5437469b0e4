import { describe, expect, it } from 'vitest';
import { listContent } from '../../src/read/files.ts';
import { type Changes, inContentFolder } from '../check/content-folder.ts';

const listed = (changes: Changes) => inContentFolder(changes, listContent);
const problemsIn = async (changes: Changes) =>
  (await listed(changes)).problems.map(({ file, message, fix }) => `${file}: ${message} → ${fix}`);

describe('the files of a project', () => {
  it('are listed by kind, several of one kind too, in the order of their names, the plain name first', async () => {
    const { projects } = await listed({
      'press/ledger/hours-2024.yaml': '',
      'press/rates.csv': '',
    });
    expect(projects.map(({ id }) => id)).toEqual(['press']);
    expect(projects[0]?.records.map(({ kind, file }) => `${kind} ${file}`)).toEqual([
      'instruments press/instruments.yaml',
      'phases press/phases.yaml',
      'project press/project.yaml',
      'rates press/rates.csv',
      'sources press/sources.yaml',
      'specs press/specs.yaml',
      'costs press/ledger/costs.csv',
      'hours press/ledger/hours.csv',
      'hours press/ledger/hours-2024.yaml',
      'parts press/ledger/parts.yaml',
      'readings press/ledger/readings.csv',
      'searches press/ledger/searches.csv',
    ]);
    expect(projects[0]?.entries).toEqual(['press/entries/2025-04-13-the-ram-slides.mdx']);
    expect(projects[0]?.photos).toEqual(['ram.jpg']);
  });

  it('may stand beside notes, marks and hidden files, which are not read', async () => {
    const found = await problemsIn({
      'press/README.md': '',
      'press/marks.txt': '',
      'press/marks-secret.txt': '',
      'press/.notes.swp': '',
      '.git/config': '',
      'press/entries/.draft.mdx': '',
    });
    expect(found).toEqual([]);
  });

  it('may all be missing', async () => {
    expect(await listContent('no/such/folder')).toEqual({ projects: [], problems: [] });
  });
});

describe('a file that would not be read', () => {
  it('is named with the kind that was meant', async () => {
    expect(await problemsIn({ 'press/phase.yaml': '' })).toEqual([
      'press/phase.yaml: "phase.yaml" is no file of a project → did you mean "phases"?',
    ]);
  });

  it('is named with its right ending', async () => {
    expect(await problemsIn({ 'press/ledger/costs-2025.yml': '' })).toEqual([
      'press/ledger/costs-2025.yml: "costs-2025.yml" is no file of a project → name it "costs-2025.yaml"',
    ]);
    expect(await problemsIn({ 'press/ledger/costs.ods': '' })).toEqual([
      'press/ledger/costs.ods: "costs.ods" is no file of a project → save it as .yaml or .csv',
    ]);
  });

  it('is named with all kinds when none is near', async () => {
    expect(await problemsIn({ 'press/invoices.csv': '' })).toEqual([
      'press/invoices.csv: "invoices.csv" is no file of a project → the name starts with one of: sources, phases, specs, instruments, surveys, grades, groups, photos, hours, costs, orders, budgets, parts, readings, rates, searches, findings, candidates, choices, preparations, waits, withdrawals, project',
    ]);
  });

  it('is a second project.yaml', async () => {
    expect(await problemsIn({ 'press/ledger/project.yaml': '' })).toEqual([
      'press/ledger/project.yaml: a project has one record of its own, in project.yaml of its folder → move it to press/project.yaml',
    ]);
  });

  it('is an entry without the ending of one', async () => {
    expect(await problemsIn({ 'press/entries/2025-05-01-nut.md': '' })).toEqual([
      'press/entries/2025-05-01-nut.md: "2025-05-01-nut.md" is no entry → name it "2025-05-01-nut.mdx", or move it elsewhere',
    ]);
  });
});

describe('a folder that would not be read', () => {
  it('is named with the one that was meant', async () => {
    expect(await problemsIn({ 'press/leger/hours.csv': '' })).toEqual([
      'press/leger: the folder "leger" is not read → did you mean "ledger"?',
    ]);
  });

  it('may lie among the entries', async () => {
    expect(await problemsIn({ 'press/entries/2025/x.mdx': '' })).toEqual([
      'press/entries/2025: the folder "2025" is not read → put its entries into entries/ itself',
    ]);
  });

  it('is a project whose name is no part of an address', async () => {
    expect(await problemsIn({ 'My Saw/project.yaml': '' })).toEqual([
      'My Saw: the folder "My Saw" can\'t be part of an address → use lower-case letters, digits and hyphens',
    ]);
  });
});
