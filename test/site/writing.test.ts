import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { siteDir } from '../../src/site/folders.ts';

test('nothing of the help while writing is in the built site', async () => {
  const items = await readdir(siteDir, { recursive: true, withFileTypes: true });
  const files = items.filter((item) => item.isFile() && /\.(html|css|js)$/.test(item.name));
  expect(files.length).toBeGreaterThan(50);
  for (const { parentPath, name } of files) {
    const text = await readFile(join(parentPath, name), 'utf8');
    expect(text, name).not.toMatch(/writing-panel|writing-problems|__writing|__open-in-editor/);
  }
});
