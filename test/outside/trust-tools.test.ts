import { spawnSync } from 'node:child_process';
import { generateKeyPairSync } from 'node:crypto';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { markText } from '../../src/trust/mark.ts';
import { parseKey, printKey } from '../../src/trust/note-key.ts';
import { privateHash } from '../../src/trust/row-hash.ts';
import { marksOf, rowTexts } from '../trust/small-ledger.ts';
import { noPython } from './trust-askers.ts';

const folder = mkdtempSync(join(tmpdir(), 'witnessmark-openssl-'));
afterAll(() => rmSync(folder, { recursive: true }));

const version = spawnSync('openssl', ['version'], { encoding: 'utf8' }).stdout ?? '';
const noOpenssl = Number(/^OpenSSL (\d+)/.exec(version)?.[1] ?? 0) < 3;

describe.skipIf(noOpenssl)('openssl', () => {
  const { privateKey, publicKey } = generateKeyPairSync('ed25519');
  const [mark] = marksOf(rowTexts(5), [5], privateKey);
  // The key goes by its text, as a reader would get it.
  const shown = parseKey(printKey({ name: 'example.org/lapwing', publicKey }))?.publicKey;
  const pem = shown?.export({ type: 'spki', format: 'pem' }) ?? '';

  function verifies(text: string): boolean {
    writeFileSync(join(folder, 'key.pem'), pem);
    writeFileSync(join(folder, 'mark.txt'), text);
    writeFileSync(join(folder, 'mark.sig'), mark?.signatures[0]?.signature ?? '');
    const files = ['-inkey', 'key.pem', '-in', 'mark.txt', '-sigfile', 'mark.sig'];
    const args = ['pkeyutl', '-verify', '-pubin', '-rawin', ...files];
    return spawnSync('openssl', args, { cwd: folder }).status === 0;
  }

  it('finds a mark signed by the key whose text is shown', () => {
    expect(mark && verifies(markText(mark))).toBe(true);
  });

  it('finds a mark not signed once a digit of its date is another', () => {
    expect(mark && verifies(markText(mark).replace('2025', '2024'))).toBe(false);
  });
});

it.skipIf(noPython)('Python finds the same hash of private fields, by hashlib and json', () => {
  const salt = '000102030405060708090a0b0c0d0e0f';
  const fields = { supplier: 'Höllis & Daughter', receipt: '2025/17', count: 3 };
  const script = `import hashlib, json, sys
salt, fields = json.load(sys.stdin)
text = json.dumps(fields, sort_keys=True, separators=(",", ":"), ensure_ascii=False)
print(hashlib.sha256(bytes.fromhex(salt) + text.encode()).hexdigest())`;
  const input = JSON.stringify([salt, fields]);
  const { stdout } = spawnSync('python3', ['-X', 'utf8', '-c', script], {
    input,
    encoding: 'utf8',
  });
  expect(privateHash(fields, salt)).toBe(stdout.trim());
});
