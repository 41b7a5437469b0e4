import { mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type Dirs, filesOf, inWorkshop, runCommand } from './run-command.ts';

const ANSWERS = [
  ...['--maker', 'Ostermoor', '--model', '65', '--year', '1951', '--kind', 'bench lathe'],
  ...['--builder', "Nell O'Hara: turner", '--currency', 'EUR', '--time-zone', 'Europe/Dublin'],
];

const inNewFolder = (use: (dirs: Dirs) => Promise<void>) =>
  inWorkshop({}, async (dirs) => {
    await rm(dirs.content, { recursive: true });
    await use(dirs);
  });

const textOf = (dirs: Dirs, file: string) => readFile(join(dirs.content, file), 'utf8');

describe('a new project', () => {
  it('begins a site that passes the check and can be built, and is never written over', () =>
    inNewFolder(async (dirs) => {
      const made = await runCommand(['new', 'project', ...ANSWERS, '--language', 'en-GB'], dirs);
      expect(made.err).toBe('');
      expect(made.status).toBe(0);
      const checked = await runCommand(['check'], dirs);
      expect(checked.out).toBe('1 project, 0 entries, 11 records read: 0 problems.\n');
      const built = await runCommand(['build'], dirs);
      expect(built.status).toBe(0);
      expect(await readFile(join(dirs.dist, 'ostermoor-65/index.html'), 'utf8')).toContain(
        'Ostermoor 65',
      );

      const before = await filesOf(dirs.content);
      const again = await runCommand(['new', 'project', ...ANSWERS], dirs);
      expect(again.status).toBe(1);
      expect(again.err).toContain('ostermoor-65 already');
      expect(await filesOf(dirs.content)).toEqual(before);
    }));

  it('is made where pages have no words of the language yet', () =>
    inNewFolder(async (dirs) => {
      const made = await runCommand(['new', 'project', ...ANSWERS, '--language', 'fr-FR'], dirs);
      expect([made.status, made.err]).toEqual([0, '']);
      const checked = await runCommand(['check'], dirs);
      expect([checked.status, checked.out]).toEqual([0, expect.stringContaining('1 warning')]);
    }));

  it('joins a site that is there, takes its builder, and takes rows at once', () =>
    inWorkshop({}, async (dirs) => {
      const site = await textOf(dirs, 'site.yaml');
      const at = ANSWERS.indexOf('--builder');
      const args = ANSWERS.toSpliced(at, 2);
      const made = await runCommand(['new', 'project', ...args, '--id', 'planer'], dirs);
      expect(made.status).toBe(0);
      expect(await textOf(dirs, 'site.yaml')).toBe(site);
      expect(site).toContain(
        (await textOf(dirs, 'planer/project.yaml')).match(/^builder: .*$/m)?.[0],
      );

      for (const words of [
        ['hours', '2:30', 'survey', 'dismantling', 'Took the belt guard off'],
        ['cost', '42.50', 'tool', 'survey', 'Sling, two metres'],
        ['reading', 'overall-length', '1131', '1132', 'mm', 'tape', '--state', 'as-found'],
        ['part', 'Belt guard', '--system', 'headstock', '--source', 'base', '--got', '2026-01-10'],
        ['search', 'belt-guard', 'none', '--note', 'Never heard of it'],
      ])
        expect(await runCommand(['add', ...words, '--project', 'planer'], dirs)).toMatchObject({
          status: 0,
          err: '',
        });
      expect((await runCommand(['check'], dirs)).out).toContain(': 0 problems.');
    }));

  it('is made once where it is asked for twice at the same moment', () =>
    inNewFolder(async (dirs) => {
      const both = [1, 2].map(() => runCommand(['new', 'project', ...ANSWERS], dirs));
      const statuses = (await Promise.all(both)).map(({ status }) => status);
      expect(statuses.sort()).toEqual([0, 1]);
      expect((await runCommand(['check'], dirs)).status).toBe(0);
    }));

  it('names what is missing or wrong, and writes nothing', () =>
    inNewFolder(async (dirs) => {
      const missing = await runCommand(['new', 'project', '--maker', 'Ostermoor'], dirs);
      expect(missing.status).toBe(1);
      expect(missing.err).toBe(
        'Missing: --model, --year, --kind, --builder, --currency.\nNothing was written.\n',
      );
      const wrong = [
        [['--year', 'old'], '--year "old"'],
        [['--currency', 'euros'], '--currency "euros"'],
        [['--time-zone', 'Mars/Crater'], '"Mars/Crater" is no time zone'],
        [['--id', 'My Lathe'], `"My Lathe" can't name a folder`],
        [['--id', 'search'], 'the folder "search" would have an address that the site uses itself'],
        [['--language', '??'], 'language'],
      ] as const;
      for (const [args, told] of wrong) {
        const refused = await runCommand(['new', 'project', ...ANSWERS, ...args], dirs);
        expect(refused.err).toContain(told);
        expect(refused.status).toBe(1);
      }
      expect(Object.keys(await filesOf(dirs.content)).filter((file) => !/^\./.test(file))).toEqual(
        [],
      );
    }));
});

describe('a new entry', () => {
  it('lists rows and photos that no entry tells, stays a draft, and is never written over', () =>
    inNewFolder(async (dirs) => {
      await runCommand(['new', 'project', ...ANSWERS, '--language', 'en-GB'], dirs);
      await writeFile(
        join(dirs.content, 'ostermoor-65/ledger/hours.csv'),
        `id,date,hours,phase,work,what,withhold
h-001,2026-01-10,2:00,survey,survey,Looked,
h-002,2026-01-11,1:00,strip,dismantling,Guard off; left a */ mark,
h-003,2026-01-12,1:30,strip,cleaning,A quarrel,what
h-004,2026-01-20,1:00,repair,repair,Later,
`,
      );
      await mkdir(join(dirs.content, 'ostermoor-65/photos'), { recursive: true });
      await writeFile(join(dirs.content, 'ostermoor-65/photos/guard.jpg'), 'no picture yet');
      await writeFile(
        join(dirs.content, 'ostermoor-65/entries/2026-01-10-first.mdx'),
        '---\ntitle: First\ndate: 2026-01-10\nphase: survey\nsummary: A look.\ntells: [h-001]\n---\n\nText.\n',
      );
      const args = ['new', 'entry', 'ostermoor-65', 'Über: the guard', '--date', '2026-01-14'];
      const made = await runCommand(args, dirs);
      expect(made.err).toBe('');
      expect(made.out).toContain('2 rows and 1 photo');
      const file = 'ostermoor-65/entries/2026-01-14-uber-the-guard.mdx';
      const text = await textOf(dirs, file);
      expect(text).toMatchInlineSnapshot(`
        "---
        title: "Über: the guard"
        date: 2026-01-14
        phase: strip
        summary: One plain sentence that says what happened.
        draft: true # take this line out when the entry is ready
        ---

        {/* Rows that no entry tells yet. Link to one: [words](row:id) */}
        {/* 2026-01-11 h-002: 1:00 h, Guard off; left a * / mark */}
        {/* 2026-01-12 h-003: 1:30 h, withheld */}
        {/* Photos that no entry shows yet: <Photo file="…" alt="…" caption="…" /> */}
        {/* guard.jpg */}

        {/* What you wanted to do, and why. */}

        {/* What you did. Before a dangerous step: <Hazard signal="WARNING" hazard="…" harm="…" avoid="…" /> */}

        {/* What you found, and what comes next. */}

        <Tally />
        "
      `);
      expect(await runCommand(['check'], dirs)).toMatchObject({ status: 0, err: '' });

      await writeFile(join(dirs.content, file), `${text}Mine.\n`);
      const again = await runCommand(args, dirs);
      expect(again.status).toBe(1);
      expect(await textOf(dirs, file)).toBe(`${text}Mine.\n`);
    }));

  it('refuses a day, a phase and a project that are not there', () =>
    inWorkshop({}, async (dirs) => {
      const before = await filesOf(dirs.content);
      const wrong = [
        [['Guard', '--date', '2999-01-01'], 'is in the future', 1],
        [['Guard', '--date', '2025-02-30'], '"2025-02-30" is no day', 1],
        [['Guard', '--phase', 'nowhere'], 'no phase "nowhere"', 1],
        [['!!!'], 'needs a letter', 1],
        [[], 'Missing: a title', 1],
        [['nothing', 'Guard'], 'no project "nothing"', 2],
        [['a', 'b', 'c'], 'in quotes', 2],
      ] as const;
      for (const [args, told, status] of wrong) {
        const refused = await runCommand(['new', 'entry', ...args], dirs);
        expect(refused.err).toContain(told);
        expect(refused.status).toBe(status);
      }
      expect(await filesOf(dirs.content)).toEqual(before);
    }));
});

it('says how it is used', () =>
  inNewFolder(async (dirs) => {
    const help = await runCommand(['new', '--help'], dirs);
    expect(help).toMatchObject({ status: 0, err: '' });
    expect(help.out).toContain('npm run new -- entry "Cab off"');
    for (const args of [[], ['machine'], ['project', '--colour', 'red']])
      expect((await runCommand(['new', ...args], dirs)).status).toBe(2);
  }));
