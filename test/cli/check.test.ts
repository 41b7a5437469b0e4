import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { filesOf, inWorkshop, type Ran, runCommand } from './run-command.ts';

const HOURS = 'press/ledger/hours.csv';

/** The text with the way to the content folder left out, which is another one in every run. */
const withoutWay = (text: string) => text.replace(/\S*witnessmark-content-[^/\s]+\//g, '');

function expectNoStackTrace({ out, err }: Ran): void {
  expect(out + err).not.toMatch(/^\s+at .+:\d+/m);
}

describe('check', () => {
  it('ends with 0 and one line when nothing is wrong', () =>
    inWorkshop({}, async (dirs) => {
      const ran = await runCommand(['check'], dirs);
      expect(ran).toEqual({
        status: 0,
        out: '1 project, 1 entry, 17 records read: 0 problems.\n',
        err: '',
      });
    }));

  it('ends with 1 and says place, mistake and remedy of each problem', () =>
    inWorkshop({ [HOURS]: ['5:00,teardown', '5:00,teardwon'] }, async (dirs) => {
      const ran = await runCommand(['check'], dirs);
      expect(ran.status).toBe(1);
      expect(withoutWay(ran.out)).toBe(`press/ledger/hours.csv:3:23
  unknown phase "teardwon"
  → did you mean "teardown"?

1 project, 1 entry, 17 records read: 1 problem in 1 file.
`);
      expect(ran.err).toBe('');
    }));

  it('ends with 0 when it only warns', () =>
    inWorkshop(
      {
        'press/ledger/readings-screw.csv': `id,spec,date,state,values,unit,instrument
r-010,screw-torque,2025-05-02,as-found,6.5,N·m,torque-wrench
`,
      },
      async (dirs) => {
        const ran = await runCommand(['check'], dirs);
        expect(ran.status).toBe(0);
        expect(withoutWay(ran.out)).toContain('press/ledger/readings-screw.csv:2:48 (warning)\n');
        expect(ran.out).toContain('18 records read: 1 warning in 1 file.');
      },
    ));

  it('says the same as JSON for other programs', () =>
    inWorkshop({ [HOURS]: ['5:00,teardown', '5:00,teardwon'] }, async (dirs) => {
      const ran = await runCommand(['check', '--format', 'json'], dirs);
      expect(ran.status).toBe(1);
      expect(JSON.parse(ran.out)).toEqual({
        errors: 1,
        warnings: 0,
        problems: [
          {
            level: 'error',
            code: 'id/unknown',
            file: HOURS,
            line: 3,
            column: 23,
            message: 'unknown phase "teardwon"',
            fix: 'did you mean "teardown"?',
            mend: { from: 'teardwon', to: 'teardown' },
          },
        ],
      });
    }));

  it('gives an empty list as JSON when nothing is wrong', () =>
    inWorkshop({}, async (dirs) => {
      const ran = await runCommand(['check', '--format', 'json'], dirs);
      expect(ran.status).toBe(0);
      expect(JSON.parse(ran.out)).toEqual({ errors: 0, warnings: 0, problems: [] });
    }));

  it('shows what it would mend, mends it, and has nothing to mend then', () =>
    inWorkshop(
      { [HOURS]: ['2025-03-08,5:00,teardown', '8 March 2025,5:00,teardwon'] },
      async (dirs) => {
        const before = await filesOf(dirs.content);
        const shown = await runCommand(['check', '--fix', '--dry-run'], dirs);
        expect(shown.status).toBe(1);
        expect(await filesOf(dirs.content)).toEqual(before);

        const mended = await runCommand(['check', '--fix'], dirs);
        expect(mended.status).toBe(0);
        expect(withoutWay(mended.out)).toBe(`press/ledger/hours.csv:3:7  8 March 2025 → 2025-03-08
press/ledger/hours.csv:3:23  teardwon → teardown
Mended 2 values in 1 file.

1 project, 1 entry, 17 records read: 0 problems.
`);
        const after = await filesOf(dirs.content);
        const again = await runCommand(['check', '--fix'], dirs);
        expect(again.out).toContain('Nothing that has only one answer.');
        expect(await filesOf(dirs.content)).toEqual(after);
      },
    ));

  it('writes nothing', () =>
    inWorkshop({}, async (dirs) => {
      const before = await filesOf(dirs.content);
      await runCommand(['check'], dirs);
      expect(await filesOf(dirs.content)).toEqual(before);
      expect(await filesOf(join(dirs.work, '..'))).toEqual({});
    }));

  it('answers broken files of every format without a stack trace', () =>
    inWorkshop(
      {
        'site.yaml': 'title: "open\n',
        'press/phases.yaml': '- [}\n',
        [HOURS]: 'id,"date\n',
        'press/ledger/searches.csv': Uint8Array.of(0xff, 0x00, 0x0a),
        'press/entries/2025-05-01-x.mdx': '---\ntitle: x\n---\n<Spec {\n',
      },
      async (dirs) => {
        const ran = await runCommand(['check'], dirs);
        expect(ran.status).toBe(1);
        expectNoStackTrace(ran);
      },
    ));
});

describe('check used wrongly ends with 2 and says how it is used:', () => {
  it.each([['--format', 'xml'], ['--colour'], ['--format'], ['press']])('%s %s', (...args) =>
    inWorkshop({}, async (dirs) => {
      const ran = await runCommand(['check', ...args.filter(Boolean)], dirs);
      expect(ran.status).toBe(2);
      expect(ran.err).toContain('npm run check [-- --format text|json]');
      expectNoStackTrace(ran);
    }),
  );

  it('without a content folder', () =>
    inWorkshop({}, async (dirs) => {
      const ran = await runCommand(['check'], { ...dirs, content: join(dirs.content, 'none') });
      expect(ran.status).toBe(2);
      expect(ran.err).toMatch(/^There is no folder \S+none\. Set WITNESSMARK_CONTENT /);
      expectNoStackTrace(ran);
    }));

  it('but --help is no wrong use', () =>
    inWorkshop({}, async (dirs) => {
      const ran = await runCommand(['check', '--help'], dirs);
      expect(ran.status).toBe(0);
      expect(ran.out).toContain('Exit status: 0 no problem, 1 problems, 2 wrong use.');
    }));
});

describe('a content folder that is a file', () => {
  it('is a problem like any other', () =>
    inWorkshop({}, async (dirs) => {
      const ran = await runCommand(['check'], {
        ...dirs,
        content: join(dirs.content, 'site.yaml'),
      });
      expect(ran.status).toBe(1);
      expect(ran.out).toContain('there is no site.yaml');
      expectNoStackTrace(ran);
    }));
});

describe('a command that does not exist', () => {
  it.each(['chekc', '', '../check', 'leaks'])('is said to be none: "%s"', (command) =>
    inWorkshop({}, async (dirs) => {
      const ran = await runCommand([command], dirs);
      expect(ran).toMatchObject({ status: 2, out: '' });
      expect(ran.err).toBe(`There is no command "${command}". "npm run" lists those there are.\n`);
    }),
  );
});
