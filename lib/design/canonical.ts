// The canonical form of a document (RFC 8785) and its hash (SHA-256): what a signature covers.

import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalize from 'canonicalize';

/**
 * RFC 8785 text of any JSON value: sorted keys, shortest numbers, no spaces. Throws on numbers that are not finite, on
 * halves of surrogate pairs and on functions; a key without a value is left out, as in stored JSON.
 */
export function canonical(value: unknown): string {
  const text = canonicalize(value);
  if (text === undefined) throw new TypeError('Only JSON values have a canonical form.');
  if (halfPair.test(text))
    throw new TypeError('A text holds half a surrogate pair, which has no canonical form.');
  return text;
}

// A lone half is printed as an escape; an escaped backslash before “ud8…” is not one.
const halfPair = /(?<!\\)(?:\\\\)*\\ud[89a-f]/;

/** SHA-256 of the canonical form, 64 hexadecimal digits. */
export function hashOf(value: unknown): string {
  return bytesToHex(sha256(utf8ToBytes(canonical(value))));
}
