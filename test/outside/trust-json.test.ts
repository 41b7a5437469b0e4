import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { canonicalJson } from '../../src/trust/canonical-json.ts';

// Test data of RFC 8785's authors: cyberphone/json-canonicalization, testdata/input and testdata/output.
describe('RFC 8785, by the test data of its authors', () => {
  test.each([
    ['arrays', '[56,{"d":true,"10":null,"1":[ ]}]', '[56,{"1":[],"10":null,"d":true}]'],
    [
      'structures',
      '{"1":{"f":{"f":"hi","F":5},"\\n":56.0},"10":{},"":"empty","a":{},"111":[{"e":"yes","E":"no"}],"A":{}}',
      '{"":"empty","1":{"\\n":56,"f":{"F":5,"f":"hi"}},"10":{},"111":[{"E":"no","e":"yes"}],"A":{},"a":{}}',
    ],
    [
      'values',
      '{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],"string":"\\u20ac$\\u000F\\u000aA\'\\u0042\\u0022\\u005c\\\\\\"\\/","literals":[null,true,false]}',
      '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}',
    ],
    ['unicode', '{"Unnormalized Unicode":"A\\u030a"}', '{"Unnormalized Unicode":"A\u030a"}'],
    [
      'french',
      '{"peach":"This sorting order","péché":"is wrong according to French","pêche":"but canonicalization MUST","sin":"ingnore locale"}',
      '{"peach":"This sorting order","péché":"is wrong according to French","pêche":"but canonicalization MUST","sin":"ingnore locale"}',
    ],
    [
      'french, the other way round',
      '{"sin":"ingnore locale","pêche":"but canonicalization MUST","péché":"is wrong according to French","peach":"This sorting order"}',
      '{"peach":"This sorting order","péché":"is wrong according to French","pêche":"but canonicalization MUST","sin":"ingnore locale"}',
    ],
  ])('%s', (_, input, output) => {
    expect(canonicalJson(JSON.parse(input))).toBe(output);
  });

  test('weird, in its bytes: names in the order of UTF-16 code units', () => {
    const input =
      '{"\\u20ac":"Euro Sign","\\r":"Carriage Return","\\u000a":"Newline","1":"One","\\u0080":"Control\\u007f","\\ud83d\\ude02":"Smiley","\\u00f6":"Latin Small Letter O With Diaeresis","\\ufb33":"Hebrew Letter Dalet With Dagesh","</script>":"Browser Challenge"}';
    expect(Buffer.from(canonicalJson(JSON.parse(input))).toString('hex')).toBe(
      '7b225c6e223a224e65776c696e65222c225c72223a2243617272696167652052657475726e222c2231223a224f6e65222c223c2f7363726970743e223a2242726f77736572204368616c6c656e6765222c22c280223a22436f6e74726f6c7f222c22c3b6223a224c6174696e20536d616c6c204c6574746572204f205769746820446961657265736973222c22e282ac223a224575726f205369676e222c22f09f9882223a22536d696c6579222c22efacb3223a22486562726577204c65747465722044616c6574205769746820446167657368227d',
    );
  });
});

/** The double with these 64 bits. */
function doubleOf(bits: bigint): number {
  const view = new DataView(new ArrayBuffer(8));
  view.setBigUint64(0, bits);
  return view.getFloat64(0);
}

// RFC 8785 appendix B, and two more from the same repository's README.
const NUMBERS = `
  0000000000000000 0                        8000000000000000 0
  0000000000000001 5e-324                   8000000000000001 -5e-324
  7fefffffffffffff 1.7976931348623157e+308  ffefffffffffffff -1.7976931348623157e+308
  4340000000000000 9007199254740992         c340000000000000 -9007199254740992
  4430000000000000 295147905179352830000    44b52d02c7e14af5 9.999999999999997e+22
  44b52d02c7e14af6 1e+23                    44b52d02c7e14af7 1.0000000000000001e+23
  444b1ae4d6e2ef4e 999999999999999700000    444b1ae4d6e2ef4f 999999999999999900000
  444b1ae4d6e2ef50 1e+21                    3eb0c6f7a0b5ed8c 9.999999999999997e-7
  3eb0c6f7a0b5ed8d 0.000001                 41b3de4355555553 333333333.3333332
  41b3de4355555554 333333333.33333325       41b3de4355555555 333333333.3333333
  41b3de4355555556 333333333.3333334        41b3de4355555557 333333333.33333343
  becbf647612f3696 -0.0000033333333333333333  43143ff3c1cb0959 1424953923781206.2
  4340000000000001 9007199254740994         4340000000000002 9007199254740996`;
const numbers = [...NUMBERS.matchAll(/([0-9a-f]{16}) (\S+)/g)].map(([, bits, text]) => [
  bits,
  text,
]);

test('the list of numbers was read whole', () => {
  expect(numbers.length).toBe(26);
});

test.each(numbers)('the double %s is written %s', (bits, text) => {
  expect(canonicalJson(doubleOf(BigInt(`0x${bits}`)))).toBe(text);
});

test.each(['7fffffffffffffff', '7ff0000000000000', 'fff0000000000000'])(
  'the double %s, which is no number, is an error (RFC 8785 appendix B)',
  (bits) => {
    expect(() => canonicalJson(doubleOf(BigInt(`0x${bits}`)))).toThrow(TypeError);
  },
);

// The same repository, testdata/README.md: the first 1000 and 10,000 lines `bits,text` of the sequence of 100 million, as a hash.
const STATIC = `
  0000000000000000 8000000000000000 0000000000000001 8000000000000001 c46696695dbd1cc3 c43211ede4974a35 c3fce97ca0f21056
  c3c7213080c1a6ac c39280f39a348556 c35d9b1f5d20d557 c327af4c4a80aaac c2f2f2a36ecd5556 c2be51057e155558 c28840d131aaaaac
  c253670dc1555557 c21f0b4935555557 c1e8d5d42aaaaaac c1b3de4355555556 c17fca0555555556 c1496e6aaaaaaaab c114585555555555
  c0e046aaaaaaaaab c0aa0aaaaaaaaaaa c074d55555555555 c040aaaaaaaaaaab c00aaaaaaaaaaaab bfd5555555555555 bfa1111111111111
  bf6b4e81b4e81b4f bf35d867c3ece2a5 bf0179ec9cbd821e becbf647612f3696 be965e9f80f29212 be61e54c672874db be2ca213d840baf8
  bdf6e80fe033c8c6 bdc2533fe68fd3d2 bd8d51ffd74c861c bd5774ccac3d3817 bd22c3d6f030f9ac bcee0624b3818f79 bcb804ea293472c7
  bc833721ba905bd3 bc4ebe9c5db3c61e bc18987d17c304e5 bbe3ad30dfcf371d bbaf7b816618582f bb792f9ab81379bf bb442615600f9499
  bb101e77800c76e1 bad9ca58cce0be35 baa4a1e0a3e6fe90 ba708180831f320d ba3a68cd9e985016 446696695dbd1cc3 443211ede4974a35
  43fce97ca0f21056 43c7213080c1a6ac 439280f39a348556 435d9b1f5d20d557 4327af4c4a80aaac 42f2f2a36ecd5556 42be51057e155558
  428840d131aaaaac 4253670dc1555557 421f0b4935555557 41e8d5d42aaaaaac 41b3de4355555556 417fca0555555556 41496e6aaaaaaaab
  4114585555555555 40e046aaaaaaaaab 40aa0aaaaaaaaaaa 4074d55555555555 4040aaaaaaaaaaab 400aaaaaaaaaaaab 3fd5555555555555
  3fa1111111111111 3f6b4e81b4e81b4f 3f35d867c3ece2a5 3f0179ec9cbd821e 3ecbf647612f3696 3e965e9f80f29212 3e61e54c672874db
  3e2ca213d840baf8 3df6e80fe033c8c6 3dc2533fe68fd3d2 3d8d51ffd74c861c 3d5774ccac3d3817 3d22c3d6f030f9ac 3cee0624b3818f79
  3cb804ea293472c7 3c833721ba905bd3 3c4ebe9c5db3c61e 3c18987d17c304e5 3be3ad30dfcf371d 3baf7b816618582f 3b792f9ab81379bf
  3b442615600f9499 3b101e77800c76e1 3ad9ca58cce0be35 3aa4a1e0a3e6fe90 3a708180831f320d 3a3a68cd9e985016 4024000000000000
  4014000000000000 3fe0000000000000 3fa999999999999a 3f747ae147ae147b 3f40624dd2f1a9fc 3f0a36e2eb1c432d 3ed4f8b588e368f1
  3ea0c6f7a0b5ed8d 3e6ad7f29abcaf48 3e35798ee2308c3a 3ed539223589fa95 3ed4ff26cd5a7781 3ed4f95a762283ff 3ed4f8c60703520c
  3ed4f8b72f19cd0d 3ed4f8b5b31c0c8d 3ed4f8b58d1c461a 3ed4f8b5894f7f0e 3ed4f8b588ee37f3 3ed4f8b588e47da4 3ed4f8b588e3849c
  3ed4f8b588e36bb5 3ed4f8b588e36937 3ed4f8b588e368f8 3ed4f8b588e368f1 3ff0000000000000 bff0000000000000 bfeffffffffffffa
  bfeffffffffffffb 3feffffffffffffa 3feffffffffffffb 3feffffffffffffc 3feffffffffffffe bfefffffffffffff bfefffffffffffff
  3fefffffffffffff 3fefffffffffffff 3fd3333333333332 3fd3333333333333 3fd3333333333334 0010000000000000 000ffffffffffffd
  000fffffffffffff 7fefffffffffffff ffefffffffffffff 4340000000000000 c340000000000000 4430000000000000 44b52d02c7e14af5
  44b52d02c7e14af6 44b52d02c7e14af7 444b1ae4d6e2ef4e 444b1ae4d6e2ef4f 444b1ae4d6e2ef50 3eb0c6f7a0b5ed8c 3eb0c6f7a0b5ed8d
  41b3de4355555553 41b3de4355555554 41b3de4355555555 41b3de4355555556 41b3de4355555557 becbf647612f3696 43143ff3c1cb0959`;

/** The first doubles of the sequence: fixed ones, 2000 small ones in a row, then those that SHA-256 of SHA-256 … makes. */
function* sequence(): Generator<bigint> {
  for (const bits of STATIC.trim().split(/\s+/)) yield BigInt(`0x${bits}`);
  for (let i = 0n; i < 2000n; i++) yield 0x0010000000000000n + i;
  for (let block = Buffer.alloc(32); ; ) {
    block = createHash('sha256').update(block).digest();
    for (const at of [0, 8, 16, 24]) {
      const number = block.readDoubleLE(at);
      if (Number.isFinite(number) && number !== 0) yield block.readBigUInt64LE(at);
    }
  }
}

test.each([
  [1000, 37967, 'be18b62b6f69cdab33a7e0dae0d9cfa869fda80ddc712221570f9f40a5878687'],
  [10_000, 399022, 'b9f7a8e75ef22a835685a52ccba7f7d6bdc99e34b010992cbc5864cd12be6892'],
])(
  'the first %d numbers of the published sequence are written as published',
  (count, size, hash) => {
    const text = [...sequence().take(count)]
      .map((bits) => `${bits.toString(16)},${canonicalJson(doubleOf(bits))}\n`)
      .join('');
    expect(text.length).toBe(size);
    expect(createHash('sha256').update(text).digest('hex')).toBe(hash);
  },
);
