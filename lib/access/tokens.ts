// Invitation tokens: random, shown once, kept only as a hash.
import { createHash, randomBytes } from 'node:crypto';

export const invitationDays = 7;

/** 256 random bits, fit for a link. */
export function newToken(): string {
  return randomBytes(32).toString('base64url');
}

/** SHA-256 of a token: enough for what is already random, and a stolen database gives no working link. */
export function tokenHash(token: string): string {
  return createHash('sha256').update(token).digest('hex');
}

export function invitationExpiry(now: Date): Date {
  return new Date(now.getTime() + invitationDays * 24 * 3600 * 1000);
}
