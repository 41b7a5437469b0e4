import { execFile } from 'node:child_process';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { soundFiles } from '../check/sound-files.ts';
import { type Dirs, filesOf, inWorkshop, type Ran, runCommand } from './run-command.ts';

const ledger = ({ content }: Dirs, name: string) =>
  readFile(join(content, 'press/ledger', name), 'utf8');
const run = promisify(execFile);
const TODAY = new Intl.DateTimeFormat('sv', { timeZone: 'Europe/London' }).format(new Date());

// The command starts often here; all starts but the first are spared most of the loading.
let compiled = '';
beforeAll(async () => {
  compiled = await mkdtemp(join(tmpdir(), 'witnessmark-compiled-'));
  vi.stubEnv('NODE_COMPILE_CACHE', compiled);
});
afterAll(async () => {
  vi.unstubAllEnvs();
  await rm(compiled, { recursive: true, force: true });
});

/** Gives `use` a workshop in which the add command runs. */
const adding = (use: (dirs: Dirs, add: (...args: string[]) => Promise<Ran>) => Promise<void>) =>
  inWorkshop({}, (dirs) => use(dirs, (...args) => runCommand(['add', ...args], dirs)));

describe.concurrent('add', () => {
  it('writes rows from words, with the day, the next id and the rest from last time', () =>
    adding(async (dirs, add) => {
      const hours = await add('hours', '2:30', 'Scraped the slides');
      expect([hours.status, hours.err]).toEqual([0, '']);
      expect(hours.out).toBe(
        `press/ledger/hours.csv:4

h-003,${TODAY},2:30,teardown,fit,,Scraped the slides

From last time: phase, work.
Written as h-003. Take it back with: npm run undo
`,
      );
      const cost = await add(
        'cost',
        '42.50',
        'tool',
        'Sling, two metres',
        '--date=2025-05-01',
        '--recorded',
        '2025-05-02',
      );
      expect(cost.status).toBe(0);
      const reading = await add(
        'reading',
        'ram-play',
        '0.08',
        '0.09',
        '--state',
        'after',
        '--date',
        '2025-05-01',
      );
      expect([reading.status, reading.err]).toEqual([0, '']);
      const part = await add('part', 'Ball handle', '--system', 'screw', '--wanted', '2025-05-01');
      expect(part.status).toBe(0);
      const search = await add(
        'search',
        'ball-handle',
        'none',
        'Never heard of it',
        '--date',
        '2025-05-02',
      );
      expect([search.status, search.err]).toEqual([0, '']);

      const tables = ['hours.csv', 'costs.csv', 'readings.csv', 'parts.yaml', 'searches.csv'];
      const [hoursText, costs, readings, parts, searches] = await Promise.all(
        tables.map((name) => ledger(dirs, name)),
      );
      expect(hoursText).toBe(
        `${soundFiles['press/ledger/hours.csv']}h-003,${TODAY},2:30,teardown,fit,,Scraped the slides\n`,
      );
      expect(costs).toContain(
        'c-003,2025-05-01,42.50,tool,rebuild,,,"Sling, two metres",2025-05-02\n',
      );
      expect(readings).toContain(`r-003,ram-play,2025-05-01,after,0.08 0.09,mm,dial-indicator`);
      expect(parts).toMatch(
        /- id: ball-handle\n {2}name: Ball handle\n {2}system: screw\n {2}source: press\n/,
      );
      expect(searches).toMatch(/s-002,2025-05-02,ball-handle,none,.*Never heard of it/);
      const checked = await runCommand(['check'], dirs);
      expect([checked.status, checked.out]).toEqual([0, expect.stringContaining('0 problems')]);
      expect(await filesOf(dirs.dist)).toEqual({});
      expect(Object.keys(await filesOf(join(dirs.content, 'press/ledger'))).sort()).toEqual(
        [...tables].sort(),
      );
    }));

  it('checks ids, money and units before anything is written, and says what was meant', () =>
    adding(async (dirs, add) => {
      const before = await filesOf(join(dirs.content, 'press'));
      const tries = await Promise.all([
        add('hours', '1:00', 'Oiled', '--phase', 'tear-down'),
        add('cost', '--amount', '1.2.3', 'tool', 'Wire'),
        add('cost', '12', 'tool', 'Wire', '--currency', 'EUR'),
        add('reading', 'ram-play', '0.08', '--state', 'after', '--unit', 'kg'),
        add('reading', 'ram-paly', '0.08', '--state', 'after'),
      ]);
      expect(tries.map(({ status }) => status)).toEqual([1, 1, 2, 1, 1]);
      const [phase, amount, field, unit, spec] = tries.map(({ err }) => err);
      expect(phase).toMatch(
        /hours\.csv:4:\d+\n {2}unknown phase "tear-down"\n {2}→ did you mean "teardown"\?/,
      );
      expect(amount).toMatch(/"1\.2\.3"/);
      expect(field).toContain('There is no field "currency".');
      expect(unit).toMatch(/"kg"/);
      // A slip is not kept as a note to the spec of last time.
      expect(spec).toMatch(/unknown spec "ram-paly"\n {2}→ did you mean "ram-play"\?/);
      for (const { err, status } of tries)
        if (status === 1) expect(err).toMatch(/\nNothing was written\.\n$/);
      expect(await filesOf(join(dirs.content, 'press'))).toEqual(before);
    }));

  it('without a terminal names what is missing and asks nothing; --dry shows and writes nothing', () =>
    adding(async (dirs, add) => {
      const before = await filesOf(dirs.content);
      const [missing, nothing, dry] = await Promise.all([
        add('hours', '--phase', 'teardown'),
        add('reading'),
        add('cost', '5', 'tool', 'Wire', '--phase', 'rebuild', '--dry'),
      ]);
      expect([missing.status, missing.out, missing.err]).toEqual([
        1,
        '',
        'Not written: --hours, --what missing.\n',
      ]);
      expect(nothing.status).toBe(1);
      expect(nothing.err).toBe('Not written: --spec, --values missing.\n');
      expect(dry.status).toBe(0);
      expect(dry.out).toMatch(
        /press\/ledger\/costs\.csv:4\n\nc-003,.*,Wire\n\n[\s\S]*Nothing was written\.\n$/,
      );
      expect(await filesOf(dirs.content)).toEqual(before);
    }));

  it('explains itself, and refuses wrong use with status 2', () =>
    adding(async (dirs, add) => {
      const [help, none, kind, field, value, project, words] = await Promise.all([
        add('--help'),
        add(),
        add('hour-row'),
        add('hours', '1:00', 'x', '--phaze', 'teardown'),
        add('hours', '--phase'),
        add('hours', '1:00', 'x', '--project', 'pres'),
        add('hours', '1:00', 'Oiled', 'the', 'screw'),
      ]);
      expect([help.status, help.err]).toEqual([0, '']);
      expect(help.out).toContain('npm run add -- hours 2:30 --phase teardown');
      expect([none.status, none.err]).toEqual([2, help.out]);
      expect([kind.status, kind.err]).toEqual([
        2,
        expect.stringContaining('There is no kind "hour-row".'),
      ]);
      expect([field.status, field.err]).toEqual([
        2,
        expect.stringContaining('Did you mean "phase"?'),
      ]);
      expect([value.status, value.err]).toEqual([2, '--phase has no value\n']);
      expect([project.status, project.err]).toEqual([
        2,
        expect.stringContaining('Did you mean "press"?'),
      ]);
      expect([words.status, words.err]).toEqual([2, 'No field of hours takes "the", "screw".\n']);
      const away = await runCommand(['add', 'hours'], {
        ...dirs,
        content: join(dirs.dist, 'none'),
      });
      expect([away.status, away.err]).toEqual([2, expect.stringContaining('There is no folder')]);
    }));

  it('keeps a marked ledger valid', () =>
    adding(async (dirs, add) => {
      expect((await runCommand(['mark', '--date', '2025-05-01'], dirs)).status).toBe(0);
      expect((await add('hours', '0:30', 'Oiled', '--withhold', 'who')).status).toBe(0);
      expect(
        (await add('part', 'Ball handle', 'screw', '--source', 'press', '--system', 'screw'))
          .status,
      ).toBe(0);
      expect((await runCommand(['check'], dirs)).status).toBe(0);
      expect((await runCommand(['mark'], dirs)).out).toMatch(/marked 2 rows/);
      // A row that is marked stays.
      const undone = await runCommand(['undo'], dirs);
      expect([undone.status, undone.out]).toEqual([1, '']);
      expect((await runCommand(['check'], dirs)).status).toBe(0);
    }));
});

describe.concurrent('undo', () => {
  it('takes the last addition back and shows it, and refuses after a change by hand', () =>
    adding(async (dirs, add) => {
      const before = await filesOf(join(dirs.content, 'press'));
      await add('hours', '1:00', 'Oiled');
      const undone = await runCommand(['undo'], dirs);
      expect([undone.status, undone.err]).toEqual([0, '']);
      expect(undone.out).toBe(
        `press/ledger/hours.csv\n\nh-003,${TODAY},1:00,teardown,fit,,Oiled\n\nTaken back.\n`,
      );
      expect(await filesOf(join(dirs.content, 'press'))).toEqual(before);

      await add('hours', '1:00', 'Oiled');
      const file = join(dirs.content, 'press/ledger/hours.csv');
      await writeFile(file, (await readFile(file, 'utf8')).replace('Oiled', 'Greased'));
      const refused = await add('--undo');
      expect(refused.status).toBe(1);
      expect(refused.err).toContain('has been changed since h-003 was added');
      expect(await readFile(file, 'utf8')).toContain('Greased');
      expect((await runCommand(['undo', '--all'], dirs)).status).toBe(2);
    }));
});

describe.concurrent('completion', () => {
  it.each([
    ['bash', ['-n', '-c']],
    ['zsh', ['-n', '-c']],
    ['fish', ['--no-execute', '-c']],
  ] as const)('is a script that %s can read', (shell, options) =>
    adding(async (_, add) => {
      const { status, out } = await add('--completion', shell);
      expect(status).toBe(0);
      expect(out).toContain('--candidates');
      const read = await run(shell, [...options, out]).catch((error) => error);
      // A shell that is not here can't read it.
      if (read.code !== 'ENOENT') expect([read.code, read.stderr]).toEqual([undefined, '']);
    }),
  );

  it('offers kinds, ids and words of the ledger, and in bash what begins as typed', () =>
    adding(async (dirs, add) => {
      const [kinds, ids, state, wrong, script] = await Promise.all([
        add('--candidates', ''),
        add('--candidates', 'hours', '--phase', ''),
        add('--candidates', 'reading', ''),
        add('--completion', 'tcsh'),
        add('--completion', 'bash'),
      ]);
      expect(kinds.out.split('\n')).toEqual(
        expect.arrayContaining(['hours', 'cost', 'reading', 'part', 'search']),
      );
      expect(ids.out).toBe('teardown\nrebuild\n');
      expect(state.out.split('\n')).toEqual(
        expect.arrayContaining(['ram-play', 'dial-indicator', 'as-found', '--values']),
      );
      expect(wrong.status).toBe(2);
      const typed = `${script.out}
ledger-add() { node src/cli/run.mjs add "$@"; }
COMP_WORDS=(ledger-add hours --phase re); COMP_CWORD=3
_ledger_add; echo "\${COMPREPLY[@]}"`;
      const env = { ...process.env, WITNESSMARK_CONTENT: dirs.content };
      const { stdout } = await run('bash', ['-c', typed], { env });
      expect(stdout).toBe('rebuild\n');
    }));

  it.each([
    [
      ['cost', '12,50', 'tool', 'teardown', 'Rag'],
      'amount: "12,50" is not an amount\n  → write "12.50"',
    ],
    [['hours', '2:75', 'Scraped'], 'hours: "2:75" is not a length of work'],
    [['withdrawal', 'c-999', 'Counted twice'], 'unknown ledger row "c-999"'],
  ])('refuses what is nearly a number or an id as one: %j', (words, told) =>
    adding(async (_, add) => {
      const { status, err } = await add(...words);
      expect([status, err]).toEqual([1, expect.stringContaining(told)]);
    }),
  );

  it('takes an amount and the currency after it as one', () =>
    adding(async (_, add) => {
      const { status, out } = await add('cost', '10', 'GBP', 'tool', 'teardown', 'Rag', '--dry');
      expect([status, out]).toEqual([0, expect.stringContaining(',10 GBP,tool,')]);
    }));

  it('takes words that every object knows as words', () =>
    adding(async (_, add) => {
      const { status, out } = await add('hours', '1:00', 'constructor', '--dry');
      expect([status, out]).toEqual([0, expect.stringContaining(',constructor\n')]);
    }));

  it('offers nothing that a shell would run, though a record has it as its id', () =>
    adding(async (dirs, add) => {
      const phases = join(dirs.content, 'press/phases.yaml');
      const text = await readFile(phases, 'utf8');
      await writeFile(phases, text.replace('id: teardown', 'id: "$(touch ran)"'));
      const { out } = await add('--candidates', 'hours', '--phase', '');
      expect(out).toBe('rebuild\n');
    }));
});
