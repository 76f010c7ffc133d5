// What a session token holds, and how the cookie is named: the same as next-auth reads, so that a server action can set it.
import type { NextAuthOptions } from 'next-auth';
import { decode, encode, type JWT } from 'next-auth/jwt';

/** Id of the person and the version of their sessions; authority is never in it. */
export interface SessionClaim {
  readonly userId: string;
  readonly sessionVersion: number;
}

/** Absolute life of a session, in seconds: a week, then one signs in again. */
export const sessionSeconds = 7 * 24 * 3600;

/** Cookie of the session. By https it is bound to this very host; by plain http (a bench without TLS) it cannot be. */
export function sessionCookie(secure: boolean) {
  return {
    name: secure ? '__Host-pawl-session' : 'pawl-session',
    options: { httpOnly: true, sameSite: 'lax', path: '/', secure },
  } as const;
}

export function sessionSecret(): string {
  const secret = process.env.NEXTAUTH_SECRET;
  if (secret === undefined || secret.length < 32)
    throw new Error('NEXTAUTH_SECRET must be set to at least 32 random characters.');
  return secret;
}

export function sessionToken(claim: SessionClaim): Promise<string> {
  return encode({
    token: { sub: claim.userId, sv: claim.sessionVersion, since: Date.now() },
    secret: sessionSecret(),
    maxAge: sessionSeconds,
  });
}

/** A session as the pages' side of next-auth hands it over; `claim` is missing when it was revoked. */
export interface SessionWithClaim {
  readonly expires: string;
  readonly claim?: SessionClaim;
}

/**
 * Configuration of next-auth. The credentials provider is only a name for it: signing in is done by a server action,
 * and its own form would bypass the slow-down, so `authorize` refuses everyone.
 * @param stands whether the person exists and their sessions have this version; asked at every request
 * @param secure whether the request came by https
 */
export function authOptions(
  stands: (claim: SessionClaim) => Promise<boolean>,
  secure: boolean,
): NextAuthOptions {
  return {
    secret: sessionSecret(),
    useSecureCookies: secure,
    cookies: { sessionToken: sessionCookie(secure) },
    session: { strategy: 'jwt', maxAge: sessionSeconds, updateAge: sessionSeconds },
    pages: { signIn: '/sign-in' },
    logger: {
      // A cookie that cannot be read means “not signed in”; a line for each would let anyone fill the log.
      error: (code) => {
        if (code !== 'JWT_SESSION_ERROR')
          console.error(JSON.stringify({ at: new Date().toISOString(), code }));
      },
      warn: () => {},
      debug: () => {},
    },
    providers: [
      {
        id: 'credentials',
        name: 'Password',
        type: 'credentials',
        credentials: {},
        options: {},
        authorize: () => null,
      },
    ],
    callbacks: {
      async session({ session, token }) {
        const claim = claimOf(token);
        const revoked = { expires: new Date(0).toISOString() };
        if (claim === null || !(await stands(claim))) return revoked;
        return { expires: session.expires, claim };
      },
    },
  };
}

/**
 * What the token of a page request claims; null for one that is forged, broken or past its end. Opening a token derives a
 * key anew each time, which costs more than a query, so what it holds is remembered; whether it still counts is asked of the
 * database at every request all the same.
 */
export async function claimIn(token: string): Promise<SessionClaim | null> {
  const known = opened.get(token);
  if (known !== undefined && isFresh(known)) return claimOf(known);
  opened.delete(token);
  const found = await decode({ token, secret: sessionSecret() }).catch(() => null);
  if (found === null || !isFresh(found)) return null;
  remember(token, found);
  return claimOf(found);
}

const opened = new Map<string, JWT>();
const mostOpened = 1000;

function remember(token: string, holds: JWT): void {
  opened.set(token, holds);
  const [oldest] = opened.keys();
  if (oldest !== undefined && opened.size > mostOpened) opened.delete(oldest);
}

function isFresh({ exp }: JWT): boolean {
  return typeof exp === 'number' && exp * 1000 > Date.now();
}

function claimOf(token: Readonly<Record<string, unknown>>): SessionClaim | null {
  const { sub, sv, since } = token;
  if (typeof sub !== 'string' || typeof sv !== 'number' || typeof since !== 'number') return null;
  // next-auth renews the token as it is used; the absolute end counts from signing in.
  if (Date.now() - since > sessionSeconds * 1000) return null;
  return { userId: sub, sessionVersion: sv };
}
