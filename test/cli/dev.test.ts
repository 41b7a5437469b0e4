import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test, vi } from 'vitest';
import { inWorkshop, startCommand } from './run-command.ts';

const OLD = '2025-04-13-the-ram-slides';
const WAIT = { timeout: 30_000, interval: 500 };
const HOURS = 'press/ledger/hours.csv';

test('dev shows problems in the page, and the page again once they are mended', () =>
  inWorkshop({ [HOURS]: ['5:00,teardown', '5:00,teardwon'] }, async (dirs) => {
    const { child, ended } = startCommand(['dev'], dirs);
    try {
      const site = await addressOf(child.stdout);
      const page = () => textOf(`${site}press/`);
      expect(await page()).toContain('<title>1 problem in the content</title>');
      expect(await page()).toContain(encodeURIComponent(`/${HOURS}:3:23`));
      expect(await page()).toContain('did you mean &quot;teardown&quot;?');
      expect(await textOf(`${site}press/?anyway`)).toContain('Wendlebury press');

      const path = join(dirs.content, HOURS);
      await writeFile(path, (await readFile(path, 'utf8')).replace('teardwon', 'teardown'));
      expect(await page()).not.toContain('in the content</title>');
      expect(await page()).toContain('Wendlebury press');
    } finally {
      child.kill();
      await ended;
    }
  }));

test('dev shows an entry that is written while it runs, and what is typed into it', () =>
  inWorkshop({}, async (dirs) => {
    const { child, ended } = startCommand(['dev'], dirs);
    try {
      const site = await addressOf(child.stdout);
      expect((await fetch(`${site}press/log/${OLD}/`)).status).toBe(200);
      const entries = join(dirs.content, 'press/entries');
      const text = await readFile(join(entries, `${OLD}.mdx`), 'utf8');
      await writeFile(join(entries, '2025-04-13-new.mdx'), text);
      const page = () => textOf(`${site}press/log/2025-04-13-new/`);
      await vi.waitFor(async () => expect(await page()).toContain('<article class="entry"'), WAIT);
      await writeFile(join(entries, '2025-04-13-new.mdx'), `${text}\n## Typed just now\n`);
      const heading = '<h2 id="typed-just-now"';
      await vi.waitFor(async () => expect(await page()).toContain(heading), WAIT);

      // Nothing that is typed is run, however the page is asked for.
      for (const typed of ['{process.exit()}', '<Spec of={process.exit()} />']) {
        await writeFile(join(entries, '2025-04-13-new.mdx'), `${text}\n${typed}\n`);
        const anyway = () => textOf(`${site}press/log/2025-04-13-new/?anyway`);
        const refused = 'The text of this entry is not shown. press/entries/2025-04-13-new.mdx:';
        await vi.waitFor(async () => expect(await anyway()).toContain(refused), WAIT);
        expect(await page()).toContain('in the content</title>');
      }
    } finally {
      child.kill();
      await ended;
    }
  }));

function addressOf(out: NodeJS.ReadableStream | null): Promise<string> {
  let said = '';
  return new Promise((resolve, reject) => {
    out?.on('data', (part) => {
      said += String(part);
      const found = /http:\/\/localhost:\d+\//.exec(said)?.[0];
      if (found) resolve(found);
    });
    out?.on('end', () => reject(new Error(`the server did not start: ${said}`)));
  });
}

async function textOf(address: string): Promise<string> {
  return (await fetch(address)).text();
}
