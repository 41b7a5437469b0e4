import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { expect, it } from 'vitest';
import { demoFiles } from './demo-records.ts';

const yamlFiles = (await demoFiles()).filter(({ path }) => path.endsWith('.yaml'));

it('every YAML file of the demo names the schema of its kind in its first line, for the editor', async () => {
  expect(yamlFiles.length).toBeGreaterThan(10);
  for (const { path, kind } of yamlFiles) {
    const [line = ''] = (await readFile(path, 'utf8')).split('\n', 1);
    const [, schema = ''] = /^# yaml-language-server: \$schema=(\S+)$/.exec(line) ?? [];
    expect(join(dirname(path), schema), path).toBe(join('content', '.schema', `${kind}.json`));
    expect(existsSync(join(dirname(path), schema)), path).toBe(true);
  }
});
