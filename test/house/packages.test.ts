import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { readAudit } from './audit.ts';
import { notFree } from './licences.ts';
import { complaints, LIMITS, numbersOf } from './limits.ts';
import { readPackages } from './packages.ts';

test('what the project brings along is free, and no more and no larger than was agreed', () => {
  const packages = readPackages('.');
  expect(complaints(packages)).toEqual([]);
  const { productionPackages, allPackages, productionMegabytes } = numbersOf(packages);
  expect(productionPackages).toBeGreaterThan(100);
  expect(allPackages).toBeGreaterThan(productionPackages);
  expect(productionMegabytes).toBeGreaterThan(20);
});

describe('a made-up project', () => {
  const folder = mkdtempSync(join(tmpdir(), 'witnessmark-house-'));
  afterAll(() => rmSync(folder, { recursive: true }));
  const put = (file: string, content: string) => {
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    writeFileSync(join(folder, file), content);
  };
  const lock = {
    '': { dependencies: { lamp: '1.0.0' }, devDependencies: { probe: '1.0.0', old: '1.0.0' } },
    'node_modules/lamp': { license: 'MIT' },
    'node_modules/lamp/node_modules/wick': { license: 'MIT' },
    'node_modules/probe': { dev: true, license: 'MIT' },
    'node_modules/old': { dev: true },
    'node_modules/elsewhere': { license: 'ISC' },
  };
  put('package-lock.json', JSON.stringify({ packages: lock }));
  put('node_modules/lamp/package.json', '{"license":"MIT"}');
  put('node_modules/lamp/lib/light.js', 'x'.repeat(1000));
  put('node_modules/lamp/node_modules/wick/package.json', '{"license":"MIT"}');
  put('node_modules/probe/package.json', '{"license":"Look-Do-Not-Touch"}');
  put('node_modules/old/package.json', '{"licenses":[{"type":"GPL-2.0"},{"type":"MIT"}]}');
  put('node_modules/not-in-the-lock/package.json', '{"license":"MIT"}');
  const packages = readPackages(folder);

  test('is read by its lock file, each package with its own files only', () => {
    expect(packages).toEqual({
      direct: { production: 1, development: 2 },
      all: [
        { name: 'lamp', production: true, licence: 'MIT', bytes: 1017 },
        { name: 'wick', production: true, licence: 'MIT', bytes: 17 },
        { name: 'probe', production: false, licence: 'Look-Do-Not-Touch', bytes: 31 },
        { name: 'old', production: false, licence: 'GPL-2.0 OR MIT', bytes: 48 },
        { name: 'elsewhere', production: true, licence: 'ISC', bytes: undefined },
      ],
    });
    expect(numbersOf(packages)).toEqual({
      directProduction: 1,
      productionPackages: 2,
      allPackages: 5,
      productionMegabytes: 0.001034,
      allMegabytes: 0.001113,
    });
  });

  test('is told what an installed package says of itself, not what the lock file says', () => {
    expect(complaints(packages)).toEqual(['probe: licence Look-Do-Not-Touch is not on the list']);
  });

  test('may not bring along more than was agreed', () => {
    const most = { ...packages.direct, production: LIMITS.directProduction };
    expect(complaints({ direct: most, all: [] })).toEqual([]);
    expect(complaints({ direct: { ...most, production: most.production + 1 }, all: [] })).toEqual([
      `directProduction: ${LIMITS.directProduction + 1}, but ${LIMITS.directProduction} at most`,
    ]);
    const heavy = { name: 'anvil', production: true, licence: 'ISC', bytes: 1e9 };
    expect(complaints({ direct: most, all: [heavy] })).toEqual([
      `productionMegabytes: 1000, but ${LIMITS.productionMegabytes} at most`,
      `allMegabytes: 1000, but ${LIMITS.allMegabytes} at most`,
    ]);
  });
});

test.each([
  ['MIT', []],
  ['(MIT OR GPL-3.0)', []],
  ['GPL-3.0 OR Apache-2.0 AND MIT', []],
  ['Apache-2.0 AND GPL-3.0', ['GPL-3.0']],
  ['none', ['none']],
  ['SEE LICENSE IN terms.txt', ['SEE LICENSE IN terms.txt']],
])('of the licence %s is not free: %j', (expression, lacking) => {
  expect(notFree(expression)).toEqual(lacking);
});

describe('the registry', () => {
  const weak = (...severities: string[]) =>
    JSON.stringify({
      vulnerabilities: Object.fromEntries(
        severities.map((severity, index) => [`p${index}`, { name: `p${index}`, severity }]),
      ),
    });

  test('knows of nothing', () => {
    expect(readAudit(weak())).toEqual({
      told: 'audit: 0 packages with a known weakness, 0 of them high or critical',
      unsafe: [],
    });
  });

  test('knows of weaknesses: those that are high or critical fail', () => {
    const { told, unsafe } = readAudit(weak('low', 'high', 'moderate', 'critical'));
    expect(told).toBe('audit: 4 packages with a known weakness, 2 of them high or critical');
    expect(unsafe).toEqual(['p1: a known weakness, high', 'p3: a known weakness, critical']);
  });

  test('is out of reach: that is said, with no address, and nothing is claimed', () => {
    const answer = { message: 'request to https://registry.example/audit failed: ENOTFOUND' };
    expect(readAudit(JSON.stringify(answer))).toEqual({
      told: 'audit skipped: request to the registry failed: ENOTFOUND',
      unsafe: [],
    });
    expect(readAudit('').told).toBe('audit skipped: no answer');
  });
});
