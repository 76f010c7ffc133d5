// The session of a page request, from the cookie that signing in sets to the viewer that a page gets.
import { createRequire } from 'node:module';
import { beforeAll, beforeEach, expect, it, vi } from 'vitest';
import { changeRole, endMembership } from '@/lib/service/members/change-member';
import { addressOf, currentViewer, endSession, startSession } from '@/lib/service/sign-in/page-session';
import { signIn } from '@/lib/service/sign-in/sign-in';
import { signOutEverywhere } from '@/lib/service/sign-in/sign-out';
import { type Cast, cast, must, password } from './cast';

interface Cookie {
  readonly value: string;
  readonly options: { readonly secure?: boolean; readonly httpOnly?: boolean; readonly maxAge?: number };
}

// A browser's memory and the headers of its next request, in the place of Next's own.
const browser = vi.hoisted(() => ({ jar: new Map<string, Cookie>(), headers: new Headers() }));

const request = vi.hoisted(() => ({
  headers: async () => browser.headers,
  cookies: async () => ({
    set: (name: string, value: string, options: Cookie['options']) =>
      browser.jar.set(name, { value, options }),
    get: (name: string) => browser.jar.get(name),
  }),
}));

// Twice, because next-auth requires the module itself, past the mock of the test runner.
vi.mock('next/headers', () => request);
Object.assign(createRequire(import.meta.url)('next/headers'), request);

let people: Cast;
beforeAll(async () => {
  process.env.NEXTAUTH_SECRET = 'a secret only for this test, 32 characters and more';
  process.env.AUTH_TRUST_HOST = 'true';
  people = await cast('QS');
});
beforeEach(() => {
  browser.jar.clear();
  browser.headers = new Headers({ host: 'pawl.example', 'x-forwarded-host': 'pawl.example' });
});

const email = 'mo.member@qs.example';
const signsIn = async () => startSession(must(await signIn({ email, password, address: '192.0.2.9' })));

it('nobody is the viewer without a cookie, or with a made-up one', async () => {
  expect(await currentViewer()).toBeNull();
  browser.jar.set('pawl-session', { value: 'made.up', options: {} });
  expect(await currentViewer()).toBeNull();
});

it('who signed in is the viewer at the next request, until they sign out', async () => {
  await signsIn();
  expect(await currentViewer()).toMatchObject({ email, clubs: [{ code: 'QS', role: 'member' }] });
  expect([...browser.jar.values()][0]?.options).toMatchObject({ httpOnly: true, secure: false, path: '/' });
  await endSession();
  expect([...browser.jar.values()][0]).toMatchObject({ value: '', options: { maxAge: 0 } });
});

it('by https the cookie is bound to the host and to https', async () => {
  browser.headers.set('x-forwarded-proto', 'https');
  await signsIn();
  expect([...browser.jar.keys()]).toEqual(['__Host-pawl-session']);
  expect([...browser.jar.values()][0]?.options.secure).toBe(true);
  expect((await currentViewer())?.email).toBe(email);
});

it('signing out everywhere ends a session whose cookie is still in some browser', async () => {
  await signsIn();
  must(await signOutEverywhere(await currentViewer()));
  expect(await currentViewer()).toBeNull();
});

it('a changed role and an ended membership show at the next request', async () => {
  await signsIn();
  const userId = people.member.userId;
  must(await changeRole(people.steward, { club: 'QS', userId, role: 'guest' }));
  expect((await currentViewer())?.clubs).toEqual([{ code: 'QS', name: 'Club QS', role: 'guest' }]);
  must(await endMembership(people.steward, { club: 'QS', userId }));
  expect((await currentViewer())?.clubs).toEqual([]);
});

it('takes the address that the nearest proxy added, not one that the client claims', async () => {
  expect(await addressOf()).toBe('unknown');
  browser.headers.set('x-forwarded-for', '6.6.6.6, 192.0.2.44');
  expect(await addressOf()).toBe('192.0.2.44');
});
