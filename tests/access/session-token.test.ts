import { decode } from 'next-auth/jwt';
import { beforeEach, describe, expect, it } from 'vitest';
import { authOptions, sessionCookie, sessionToken } from '@/lib/access/session-token';

const secret = 'a secret only for this test, 32 characters and more';
const claim = { userId: '7d0c5f0e-0000-7000-8000-000000000001', sessionVersion: 3 };

beforeEach(() => {
  process.env.NEXTAUTH_SECRET = secret;
});

async function sessionFor(stands: boolean, token: Record<string, unknown>) {
  const session = authOptions(async () => stands, false).callbacks?.session;
  if (session === undefined) throw new Error('no session callback');
  // The callback reads token and session only; the rest of what next-auth passes belongs to database sessions.
  return session({ session: { expires: '2026-12-01T00:00:00.000Z' }, token } as never);
}

describe('a session token', () => {
  it('holds the id and the session version, and no authority', async () => {
    const token = await decode({ token: await sessionToken(claim), secret });
    expect(token).toMatchObject({ sub: claim.userId, sv: 3 });
    expect(Object.keys(token ?? {}).sort()).toEqual(['exp', 'iat', 'jti', 'since', 'sub', 'sv']);
  });

  it('cannot be read under another secret', async () => {
    const token = await sessionToken(claim);
    await expect(decode({ token, secret: `${secret}!` })).rejects.toThrow();
  });

  it('gives a claim while the person stands, and none once their sessions were ended', async () => {
    const token = { sub: claim.userId, sv: 3, since: Date.now() };
    expect(await sessionFor(true, token)).toMatchObject({ claim });
    const revoked = await sessionFor(false, token);
    expect(revoked).not.toHaveProperty('claim');
    expect(revoked.expires).toBe('1970-01-01T00:00:00.000Z');
  });

  it('ends a week after signing in, however often it was renewed', async () => {
    const week = 7 * 24 * 3600 * 1000;
    const token = { sub: claim.userId, sv: 3, since: Date.now() - week - 1000 };
    expect(await sessionFor(true, token)).not.toHaveProperty('claim');
  });

  it('is refused when it lacks a part', async () => {
    for (const token of [{}, { sub: 'x' }, { sub: 'x', sv: '3', since: 1 }, { sv: 3, since: Date.now() }])
      expect(await sessionFor(true, token)).not.toHaveProperty('claim');
  });

  it('travels in a cookie that scripts cannot read, bound to this host by https', () => {
    expect(sessionCookie(true).name).toMatch(/^__Host-/);
    expect(sessionCookie(true).options).toEqual({ httpOnly: true, sameSite: 'lax', path: '/', secure: true });
    expect(sessionCookie(false).options.httpOnly).toBe(true);
  });

  it('is never made with a missing or short secret', async () => {
    process.env.NEXTAUTH_SECRET = 'short';
    expect(() => sessionToken(claim)).toThrow('NEXTAUTH_SECRET');
  });

  it('is given by no form of next-auth: its credentials provider refuses everyone', async () => {
    const [provider] = authOptions(async () => true, false).providers;
    if (provider?.type !== 'credentials') throw new Error('no credentials provider');
    expect(await provider.authorize({}, {})).toBeNull();
  });
});
