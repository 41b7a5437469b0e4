import { expect, test } from 'vitest';
import { check } from './content-folder.ts';
import { soundFiles } from './sound-files.ts';

const entry = Object.keys(soundFiles).find((file) => file.endsWith('.mdx')) ?? '';
const draft = (more: string) =>
  `---\ntitle: Later\ndate: 2025-06-01\nphase: rebuild\nsummary: Not yet.\n${more}---\n\nTo come, see [the other](entry:2025-06-02-last).\n`;
const files = (first: string, last: string) => ({
  [entry]: `${soundFiles[entry]}\n[Later](entry:2025-06-01-later)\n`,
  'press/entries/2025-06-01-later.mdx': draft(first),
  'press/entries/2025-06-02-last.mdx': draft(last).replace('06-01', '06-02'),
});

test('warns of a link from a published entry to a draft, and not of one from a draft', async () => {
  const lines = String(soundFiles[entry]).split('\n').length + 1;
  expect(await check(files('draft: true\n', 'draft: true\n'))).toBe(
    `${entry}:${lines}:1 (warning)
  the entry "2025-06-01-later" is a draft, so that this link leads to the log
  → publish that entry too, or leave the link out until then`,
  );
});

test('says nothing where all are published', async () => {
  expect(await check(files('', ''))).toBe('');
});
