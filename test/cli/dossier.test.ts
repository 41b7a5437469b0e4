import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { main } from '../../src/cli/dossier.ts';

let said: string[];
beforeEach(() => {
  said = [];
  vi.spyOn(console, 'error').mockImplementation((text) => said.push(text));
});
afterEach(() => vi.restoreAllMocks());

const noBrowser = async () => undefined;

/** A browser that goes away as soon as a page is asked for; the rest of it is never called. */
const brokenBrowser = async () =>
  ({
    newContext: () => Promise.reject(new Error('the browser has gone')),
    close: () => Promise.resolve(),
  }) as unknown as Browser;

describe('npm run dossier', () => {
  it.each([[['--paper', 'a3']], [['--identity', 'some']], [['--colour']]])(
    'says how it is used instead of guessing at %j',
    async (args) => {
      expect(await main(args, noBrowser)).toBe(2);
      expect(said.join()).toContain('npm run dossier [-- project');
    },
  );

  it('names the project that was meant', async () => {
    expect(await main(['lapwin', '--built'], noBrowser)).toBe(2);
    expect(said).toEqual(['There is no project "lapwin". Did you mean "lapwing"?']);
  });

  it('says what to install where there is no browser, before it builds anything', async () => {
    expect(await main([], noBrowser)).toBe(1);
    expect(said.join()).toMatch(/^There is no browser to print with\. .*install Chrome/);
  });

  it('leaves the file of before when printing breaks', async () => {
    const out = await mkdtemp(join(tmpdir(), 'witnessmark-dossier-'));
    await writeFile(join(out, 'lapwing.pdf'), 'as it was');
    expect(await main(['lapwing', '--built', '--out', out], brokenBrowser)).toBe(1);
    expect(said).toEqual(['Printing broke: the browser has gone']);
    expect(await readdir(out)).toEqual(['lapwing.pdf']);
    expect(await readFile(join(out, 'lapwing.pdf'), 'utf8')).toBe('as it was');
    await rm(out, { recursive: true });
  });
});
