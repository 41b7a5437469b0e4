import { createPrivateKey } from 'node:crypto';
import { describe, expect, it, test } from 'vitest';
import { consistencyProof, verifyConsistency } from '../../src/trust/consistency.ts';
import { utf8 } from '../../src/trust/hash.ts';
import { hashTree, leafHash, nodeHash } from '../../src/trust/hash-tree.ts';
import { inclusionProof, verifyInclusion } from '../../src/trust/inclusion.ts';
import { parseSignature, printSignature, signNote, verifyNote } from '../../src/trust/note.ts';
import { parseKey, printKey } from '../../src/trust/note-key.ts';

const hex = (bytes: Uint8Array) => Buffer.from(bytes).toString('hex');
const bytes = (text: string) => Buffer.from(text, 'hex');
const lines = (text: string) => text.trim().split(/\s+/);

// Reference vectors of RFC 6962 trees: transparency-dev/merkle, testonly/constants.go, rfc6962/rfc6962_test.go and testdata/.
const inputs = ['', '00', '10', '2021', '3031', '40414243', '5051525354555657'];
const leaves = [...inputs, '606162636465666768696a6b6c6d6e6f'].map((d) => leafHash(bytes(d)));
const tree = hashTree(leaves);

const roots = lines(`
  e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855
  6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d
  fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125
  aeb6bcfe274b70a14fb067a5e5578264db0fa9b51af5e0ba159158f329e06e77
  d37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7
  4e3bbb1f7b478dcfe71fb631631519a3bca12c9aefca1612bfce4c13a86264d4
  76e67dadbcdf1e10e1b74ddc608abd2f98dfb16fbce75277b5232a127f2087ef
  ddb89be403809e325750d3d263cd78929c2942b7942a34b77e122c9594a74c8c
  5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328`);

const leafHashes = lines(`
  6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d
  96a296d224f285c67bee93c30f8a309157f0daa35dc5b87e410b78630a09cfc7
  0298d122906dcfc10892cb53a73992fc5b9f493ea4c9badb27b791b4127a7fe7
  07506a85fd9dd2f120eb694f86011e5bb4662e5c415a62917033d4a9624487e7
  bc1a0643b12e4d2d7c77918f44e0f4f79a838b6cf9ec5b5c283e1f4d88599e6b
  4271a26be0d8a84f0bd54c8c302e7cb3a3b5d1fa6780a40bcce2873477dab658
  b08693ec2e721597130641e8211e7eedccb4c26413963eee6c1e2ed16ffb1a5f
  46f6ffadd3d06a09ff3c5860d2755c8b9819db7df44251788c7d8e3180de8eb1`);

const [h01, h23, h45] = [
  'fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125',
  '5f083f0a1a33ca076a95279832580db3e0ef4584bdff1f54c8a360f50de3031e',
  '0ebc5d3437fbe2db158b9f126a1d118e308181031d0a949f8dededebc558ef6a',
];
const h67 = 'ca854ea128ed050b41b35ffc1b87b8eb2bde461e9e3b5596ece6b9d5975a0ae0';
const h4to7 = '6b47aaf29ee3c2af9af889bc1fb9254dabd31177f16232dd6aab035ca39bf6e4';
const [h0, h1, , , h4, , h6] = leafHashes;
const h0to3 = roots[4];

describe('RFC 6962 trees, by the vectors of the reference implementation', () => {
  test.each(roots.map((root, size) => [size, root] as const))(
    'the root of %d leaves',
    (n, root) => {
      expect(hex(tree.root(n))).toBe(root);
      expect(hex(hashTree(leaves.slice(0, n)).root())).toBe(root);
    },
  );

  test('leaf and node hashes', () => {
    expect(leaves.map(hex)).toEqual(leafHashes);
    expect(hex(leafHash(utf8('L123456')))).toBe(
      '395aa064aa4c29f7010acfe3f25db9485bbd4b91897b6ad7ad547639252b4d56',
    );
    expect(hex(nodeHash(utf8('N123'), utf8('N456')))).toBe(
      'aa217fe888e47007fa15edab33c2b492a722cb106c64667fc2b044444de66bbb',
    );
  });

  test.each([
    [0, 1, []],
    [0, 8, [h1, h23, h4to7]],
    [5, 8, [h4, h67, h0to3]],
    [2, 3, [h01]],
    [1, 5, [h0, h23, h4]],
  ])('the inclusion proof of leaf %d of %d', (index, size, proof) => {
    expect(inclusionProof(tree, index, size).map(hex)).toEqual(proof);
    const claim = {
      leaf: bytes(leafHashes[index] ?? ''),
      index,
      size,
      root: bytes(roots[size] ?? ''),
    };
    const given = proof.map((hash) => bytes(hash ?? ''));
    expect(verifyInclusion(claim, given)).toEqual({ holds: true });
  });

  test.each([
    [1, 1, []],
    [1, 8, [h1, h23, h4to7]],
    [6, 8, [h45, h67, h0to3]],
    [2, 5, [h23, h4]],
    [6, 7, [h45, h6, h0to3]],
  ])('the consistency proof from %d to %d leaves', (first, second, proof) => {
    expect(consistencyProof(tree, first, second).map(hex)).toEqual(proof);
    const [firstRoot, secondRoot] = [bytes(roots[first] ?? ''), bytes(roots[second] ?? '')];
    const given = proof.map((hash) => bytes(hash ?? ''));
    expect(verifyConsistency({ first, second, firstRoot, secondRoot }, given).holds).toBe(true);
  });

  test('roots that changed places are refused (testdata/consistency/2/swapped-roots.json)', () => {
    const [firstRoot, secondRoot] = [bytes(roots[8] ?? ''), bytes(roots[6] ?? '')];
    const proof = [h45, h67, h0to3].map((hash) => bytes(hash ?? ''));
    expect(verifyConsistency({ first: 6, second: 8, firstRoot, secondRoot }, proof).holds).toBe(
      false,
    );
  });
});

// The worked example of signed notes: golang.org/x/mod/sumdb/note, package documentation.
describe('the published example of a signed note', () => {
  const text =
    "If you think cryptography is the answer to your problem,\nthen you don't know what your problem is.\n";
  const line =
    '— PeterNeumann x08go/ZJkuBS9UG/SffcvIAQxVBtiFupLLr8pAcElZInNIuGUgYN1FFYC2pZSNXgKvqfqdngotpRZb6KE6RyyBwJnAM=';
  const keyText = 'PeterNeumann+c74f20a3+ARpc2QcUPDhMQegwxbzhKqiBfsVkmqq/LDE4izWy10TW';
  const seed = Buffer.from('AYEKFALVFGyNhPJEMzD1QIDr+Y7hfZx09iUvxdXHKDFz', 'base64').subarray(1);

  const key = parseKey(keyText);
  const signature = parseSignature(line);
  if (!key || !signature) throw new Error('the example was not read');

  it('is signed by its key, and not once a letter is another', () => {
    expect(verifyNote(text, [signature], key)).toEqual({ holds: true });
    expect(verifyNote(text.replace('you', 'yon'), [signature], key).holds).toBe(false);
  });

  it('has a key and a signature that print as they were', () => {
    expect(printKey(key)).toBe(keyText);
    expect(printSignature(signature)).toBe(`${line}\n`);
  });

  it('is signed anew, byte for byte, with its published private key', () => {
    const { x } = key.publicKey.export({ format: 'jwk' });
    const jwk = { kty: 'OKP', crv: 'Ed25519', x: x ?? '', d: seed.toString('base64url') };
    const privateKey = createPrivateKey({ key: jwk, format: 'jwk' });
    expect(printSignature(signNote(text, 'PeterNeumann', privateKey))).toBe(`${line}\n`);
  });
});
