// The session of a page request: who it is, starting one and ending it. Server only.
import 'server-only';
import { cookies, headers } from 'next/headers';
import type { NextAuthOptions } from 'next-auth';
import { cache } from 'react';
import {
  authOptions,
  claimIn,
  sessionCookie,
  sessionSeconds,
  sessionToken,
} from '@/lib/access/session-token';
import type { Viewer } from '../viewer';
import type { SignedIn } from '../views/members';
import { viewerOf } from './viewer';

/** The person of this request's session, or null. Read once a request, from the database. */
export const currentViewer = cache(async (): Promise<Viewer | null> => {
  const token = (await cookies()).get(sessionCookie(await isSecure()).name)?.value;
  return token === undefined ? null : viewerOf(await claimIn(token));
});

/** Sets the session cookie; call it in a server action, after `signIn` or `join`. */
export async function startSession(signedIn: SignedIn): Promise<void> {
  const cookie = sessionCookie(await isSecure());
  (await cookies()).set(cookie.name, await sessionToken(signedIn), {
    ...cookie.options,
    maxAge: sessionSeconds,
  });
}

/** Removes the session cookie: signs out of this device. */
export async function endSession(): Promise<void> {
  const cookie = sessionCookie(await isSecure());
  (await cookies()).set(cookie.name, '', { ...cookie.options, maxAge: 0 });
}

/** Network address of the request, for slowing guesses down. Trusts the front proxy to overwrite x-forwarded-for. */
export async function addressOf(): Promise<string> {
  const forwarded = (await headers()).get('x-forwarded-for');
  return forwarded?.split(',').at(-1)?.trim().slice(0, 100) || 'unknown';
}

/** Configuration of next-auth for this request. */
export async function requestAuthOptions(): Promise<NextAuthOptions> {
  return authOptions(async (claim) => (await viewerOf(claim)) !== null, await isSecure());
}

async function isSecure(): Promise<boolean> {
  const proto = (await headers()).get('x-forwarded-proto');
  return proto?.split(',').at(0)?.trim() === 'https';
}
