// What a signature covers: the canonical form against RFC 8785, its hash against FIPS 180-4.
import { createHash } from 'node:crypto';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonical, hashOf } from '@/lib/design/canonical';
import { starters } from '@/lib/design/starters/registry';
import { anyDesign } from './any-design';

const seed = 20266;

function double(bits: string): number {
  return new DataView(Uint8Array.from(Buffer.from(bits, 'hex')).buffer).getFloat64(0);
}

describe('the canonical form', () => {
  // Published: RFC 8785, Appendix B, number serialization samples, as several independent test suites restate them.
  it.each([
    ['0000000000000000', '0'],
    ['8000000000000000', '0'],
    ['0000000000000001', '5e-324'],
    ['8000000000000001', '-5e-324'],
    ['7fefffffffffffff', '1.7976931348623157e+308'],
    ['ffefffffffffffff', '-1.7976931348623157e+308'],
    ['4340000000000000', '9007199254740992'],
    ['c340000000000000', '-9007199254740992'],
    ['4430000000000000', '295147905179352830000'],
    ['44b52d02c7e14af5', '9.999999999999997e+22'],
    ['44b52d02c7e14af6', '1e+23'],
    ['44b52d02c7e14af7', '1.0000000000000001e+23'],
    ['444b1ae4d6e2ef4e', '999999999999999700000'],
    ['444b1ae4d6e2ef4f', '999999999999999900000'],
    ['444b1ae4d6e2ef50', '1e+21'],
    ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
    ['3eb0c6f7a0b5ed8d', '0.000001'],
    ['41b3de4355555553', '333333333.3333332'],
    ['41b3de4355555554', '333333333.33333325'],
    ['41b3de4355555555', '333333333.3333333'],
    ['41b3de4355555556', '333333333.3333334'],
    ['41b3de4355555557', '333333333.33333343'],
    ['becbf647612f3696', '-0.0000033333333333333333'],
    ['43143ff3c1cb0959', '1424953923781206.2'],
  ])('writes the number %s as %s', (bits, text) => {
    expect(canonical(double(bits))).toBe(text);
  });

  it.each(['7fffffffffffffff', '7ff0000000000000', 'fff0000000000000'])('refuses the number %s', (bits) => {
    expect(() => canonical({ figure: double(bits) })).toThrow();
  });

  // Published: RFC 8785, 3.2.2 (example of literals, numbers and strings). From memory.
  it('writes literals, numbers and strings as the RFC does', () => {
    const given =
      '{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],' +
      '"string":"\\u20ac$\\u000F\\u000aA\'\\u0042\\u0022\\u005c\\\\\\"\\/","literals":[null,true,false]}';
    expect(canonical(JSON.parse(given))).toBe(
      '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],' +
        '"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}',
    );
  });

  // Published: RFC 8785, 3.2.3 (sorting by UTF-16 code units). From memory.
  it('sorts keys as the RFC does', () => {
    const given = {
      '\u20ac': 'Euro Sign',
      '\r': 'Carriage Return',
      '\ufb33': 'Hebrew Letter Dalet With Dagesh',
      '1': 'One',
      '\ud83d\ude00': 'Emoji: Grinning Face',
      '\u0080': 'Control',
      '\u00f6': 'Latin Small Letter O With Diaeresis',
    };
    expect(Object.values(JSON.parse(`[${canonical(given).slice(1, -1).replace(/":"/g, '","')}]`))).toEqual([
      '\r',
      'Carriage Return',
      '1',
      'One',
      '\u0080',
      'Control',
      '\u00f6',
      'Latin Small Letter O With Diaeresis',
      '\u20ac',
      'Euro Sign',
      '\ud83d\ude00',
      'Emoji: Grinning Face',
      '\ufb33',
      'Hebrew Letter Dalet With Dagesh',
    ]);
  });

  it('refuses half a surrogate pair, as RFC 8785 3.2.2.2 asks, and takes a backslash that only looks like one', () => {
    expect(() => canonical({ name: 'a\ud800' })).toThrow(TypeError);
    expect(() => canonical(['\\\ud800'])).toThrow(TypeError);
    expect(canonical('\\ud800')).toBe('"\\\\ud800"');
    expect(canonical('\ud83d\ude00')).toBe('"\ud83d\ude00"');
  });

  it.each([undefined, () => 1, Symbol('s'), 1n])('refuses %s, which JSON cannot say', (value) => {
    expect(() => canonical(value)).toThrow(TypeError);
  });

  it('reads back as the same document', () => {
    fc.assert(
      fc.property(anyDesign, (document) => {
        expect(JSON.parse(canonical(document))).toEqual(document);
      }),
      { seed, numRuns: 40 },
    );
  });
});

describe('the hash of a document', () => {
  // Published: FIPS 180-4 with the example values NIST gives for SHA-256: "abc" and the two-block message. From memory.
  it.each([
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    [
      'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    ],
  ])('is built on a SHA-256 that gives the published digest of “%s”', (message, digest) => {
    expect(bytesToHex(sha256(utf8ToBytes(message)))).toBe(digest);
  });

  it('is the SHA-256 of the canonical text, as an independent implementation gives it', () => {
    for (const { document } of Object.values(starters)) {
      const independent = createHash('sha256').update(canonical(document), 'utf8').digest('hex');
      expect(hashOf(document)).toBe(independent);
    }
    expect(hashOf({ name: 'Zähne €' })).toBe(
      createHash('sha256').update('{"name":"Zähne €"}', 'utf8').digest('hex'),
    );
  });

  it('does not depend on the order of keys nor on white space', () => {
    fc.assert(
      fc.property(anyDesign, (document) => {
        const turned = JSON.parse(JSON.stringify(reversed(document), null, 3));
        expect(Object.keys(turned)).not.toEqual(Object.keys(document));
        expect(hashOf(turned)).toBe(hashOf(document));
      }),
      { seed, numRuns: 30 },
    );
  });

  it('changes with the last digit of one field and with the order of the stages', () => {
    const { document } = starters.lifter;
    const nudged = { ...document, duty: { ...document.duty, peakTorque: 125.00000000000001 } };
    const turned = { ...document, train: { ...document.train, stages: document.train.stages.toReversed() } };
    expect(new Set([document, nudged, turned].map(hashOf)).size).toBe(3);
  });
});

function reversed(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(reversed);
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).map(([key, child]) => [key, reversed(child)]);
  return Object.fromEntries(entries.toReversed());
}
