import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, inject, test } from 'vitest';
import { filesOf } from './pages.ts';

test('nothing of the help while writing is in the built site', () => {
  const { folder } = inject('site');
  const files = filesOf(folder).filter((file) => /\.(html|css|js)$/.test(file));
  expect(files.length).toBeGreaterThan(50);
  for (const file of files)
    expect(readFileSync(join(folder, file), 'utf8'), file).not.toMatch(
      /writing-panel|writing-problems|__writing|__open-in-editor/,
    );
});
