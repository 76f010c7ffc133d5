import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { invitationExpiry, newToken, tokenHash } from '@/lib/access/tokens';

describe('an invitation token', () => {
  it('holds 256 random bits and is fit for a link', () => {
    const tokens = Array.from({ length: 200 }, newToken);
    expect(new Set(tokens).size).toBe(200);
    for (const t of tokens) {
      expect(Buffer.from(t, 'base64url')).toHaveLength(32);
      expect(encodeURIComponent(t)).toBe(t);
    }
  });

  it('is kept as its SHA-256', () => {
    expect(tokenHash('abc')).toBe(createHash('sha256').update('abc').digest('hex'));
    // Published: FIPS 180-4 example of SHA-256 for the message “abc”.
    expect(tokenHash('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
  });

  it('works for seven days', () => {
    const now = new Date('2026-03-01T12:00:00Z');
    expect(invitationExpiry(now).toISOString()).toBe('2026-03-08T12:00:00.000Z');
  });
});
