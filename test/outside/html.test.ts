import { execFile } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { type ConfigData, HtmlValidate, StaticConfigLoader } from 'html-validate';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { z } from 'zod';
import { filesOf } from '../site/pages.ts';

const site = inject('site');
const run = promisify(execFile);

/** A page with three mistakes: no alternative text, a date that is none, and an element that SVG has not. */
const BROKEN = `<!DOCTYPE html>
<html lang="en"><head><meta charset="utf-8"><title>Broken</title></head><body>
<img src="x.webp"><p><time datetime="3.5h">3.5 h</time></p><svg><rekt/></svg>
</body></html>
`;

let broken: string;
beforeAll(async () => {
  broken = await mkdtemp(join(tmpdir(), 'witnessmark-html-'));
  await writeFile(join(broken, 'index.html'), BROKEN);
});
afterAll(() => rm(broken, { recursive: true }));

describe('html-validate', () => {
  const rules: ConfigData = {
    root: true,
    extends: ['html-validate:standard', 'html-validate:a11y', 'html-validate:document'],
    // A hash protects what another host serves; the site's own style sheet comes from where the page itself comes from.
    rules: { 'require-sri': ['error', { target: 'crossorigin' }] },
  };
  const validator = new HtmlValidate(new StaticConfigLoader(rules));

  async function mistakes(folder: string): Promise<string[]> {
    const pages = filesOf(folder).filter((file) => file.endsWith('.html'));
    const reports = await Promise.all(
      pages.map(async (file) => (await validator.validateFile(join(folder, file))).results),
    );
    return reports
      .flat()
      .flatMap(({ filePath, messages }) =>
        messages.map(({ ruleId, message, line }) => `${filePath}:${line} ${ruleId}: ${message}`),
      );
  }

  test('finds no mistake on any page of the demo', async () => {
    expect(await mistakes(site.folder)).toEqual([]);
  });

  test('finds a picture without alternative text', async () => {
    expect((await mistakes(broken)).join('\n')).toContain('wcag/h37');
  });
});

describe('the Nu Html Checker', () => {
  const report = z.object({
    messages: z.array(
      z.object({
        type: z.string(),
        url: z.string().default(''),
        lastLine: z.number().default(0),
        message: z.string(),
      }),
    ),
  });
  const jar = 'node_modules/vnu-jar/build/dist/vnu.jar';
  const { java } = inject('missing');
  /** It reads files, which have no origin, so 'self' means nothing to it; a real browser keeps the policy (policy.test.ts). */
  const OWN_ORIGIN = /violates Content Security Policy/;

  /** All messages, warnings too. The checker reports on the error stream and exits with 1 when it found something. */
  async function messages(folder: string): Promise<string[]> {
    const args = ['-jar', jar, '--format', 'json', '--skip-non-html', folder];
    const said = await run('java', args, { maxBuffer: 2 ** 26 }).catch((error) => error);
    return report
      .parse(JSON.parse(said.stderr))
      .messages.filter(({ message }) => !OWN_ORIGIN.test(message))
      .map(({ type, url, lastLine, message }) => `${url}:${lastLine} ${type}: ${message}`);
  }

  test('has nothing to say of any page of the demo', async ({ skip }) => {
    skip(java !== undefined, java);
    expect(await messages(site.folder)).toEqual([]);
  });

  test('finds a missing alternative text, a wrong date and an unknown element', async ({
    skip,
  }) => {
    skip(java !== undefined, java);
    const said = (await messages(broken)).join('\n');
    expect(said).toMatch(/error: An “img” element must have an “alt” attribute/);
    expect(said).toMatch(/error: Bad value “3.5h” for attribute “datetime”/);
    expect(said).toMatch(/error: Element “rekt” not allowed/);
  });
});
