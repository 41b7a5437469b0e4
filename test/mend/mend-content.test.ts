import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { checkContent } from '../../src/check/check.ts';
import { mendContent } from '../../src/mend/mend-content.ts';
import { readContent } from '../../src/read/content.ts';
import { type Changes, inContentFolder, NOON } from '../check/content-folder.ts';

const HOURS = 'press/ledger/hours.csv';

const mend = (changes: Changes) =>
  inContentFolder(changes, async (folder) => {
    const { mended, files } = await mendContent(folder, NOON);
    for (const [file, { after }] of files) await writeFile(join(folder, file), after);
    const again = await mendContent(folder, NOON);
    return {
      said: mended.map(({ file, line, column, from, to }) =>
        [file, line, column, `${from} → ${to}`].join(':'),
      ),
      again: again.mended.length,
      left: checkContent(await readContent(folder), NOON).map(({ message }) => message),
      text: async (file: string) =>
        new TextDecoder('utf-8', { ignoreBOM: true }).decode(files.get(file)?.after),
      hours: await readFile(join(folder, HOURS), 'utf8'),
    };
  });

describe('mendContent', () => {
  test('mends dates, ids, units and words in place, and finds nothing the second time', async () => {
    const ran = await mend({
      [HOURS]: ['2025-03-08,5:00,teardown', '8 March 2025,5:00,teardwon'],
      'press/specs.yaml': ['max: 0.10 mm', 'max: "0.10 MM" # as drawn'],
      'press/ledger/costs.csv': ['180,vehicle', '180,Vehicle'],
    });
    expect(ran.said).toEqual([
      `press/ledger/costs.csv:2:22:Vehicle → vehicle`,
      `${HOURS}:3:7:8 March 2025 → 2025-03-08`,
      'press/specs.yaml:7:9:0.10 MM → 0.10 mm',
      `${HOURS}:3:23:teardwon → teardown`,
    ]);
    expect(ran.left).toEqual([]);
    expect(ran.again).toBe(0);
    expect(await ran.text('press/specs.yaml')).toContain('max: "0.10 mm" # as drawn\n');
  });

  test('keeps mark, line ends and all other bytes of a file', async () => {
    const bytes = (day: string) =>
      `\ufeffid;date;hours;phase;work;who;what\r\nh-001;${day};2:30;teardown;clean;;"Cleaned;  ""frame"""\r\n`;
    const ran = await mend({ [HOURS]: bytes(' 2025/3/2') });
    expect(ran.hours).toBe(bytes(' 2025-03-02'));
  });

  test('leaves what could mean two things', async () => {
    const ran = await mend({
      [HOURS]: ['2025-03-08', '03/08/2025'],
      'press/phases.yaml': ['after: [teardown]', 'after: [rear-down]'],
    });
    expect(ran.said).toEqual([]);
    expect(ran.left).toHaveLength(2);
  });

  test('mends one item of a list, inside its quotes', async () => {
    const ran = await mend({
      'press/phases.yaml': ['after: [teardown]', "after: [ 'teardwon' ] # first"],
    });
    expect(ran.said).toEqual(['press/phases.yaml:13:13:teardwon → teardown']);
    expect(await ran.text('press/phases.yaml')).toContain("after: [ 'teardown' ] # first\n");
  });
});
