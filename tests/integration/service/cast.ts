// A club with its people, made through the service itself, for the tests that play its stories.
import { expect } from 'vitest';
import type { Role } from '@/lib/access/policy';
import { foundClub } from '@/lib/service/members/found-club';
import { invite } from '@/lib/service/members/invite';
import { join } from '@/lib/service/members/join';
import type { Result } from '@/lib/service/result';
import { viewerOf } from '@/lib/service/sign-in/viewer';
import type { Viewer } from '@/lib/service/viewer';
import type { SignedIn } from '@/lib/service/views/members';

export const password = 'a lantern under the bench 41';

/** The value of a result; a refusal fails the test with its code. */
export function must<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(`refused: ${JSON.stringify(result.error)}`);
  return result.value;
}

/** The code of a refusal; a value fails the test. */
export function codeOf(result: Result<unknown>): string {
  expect(result.ok, 'a refusal was expected').toBe(false);
  return result.ok ? 'ok' : result.error.code;
}

export async function viewer(session: SignedIn): Promise<Viewer> {
  const found = await viewerOf(session);
  if (found === null) throw new Error('no viewer');
  return found;
}

/** Founds a club and gives its steward. */
export async function club(code: string): Promise<Viewer> {
  const steward = { email: `steward@${code.toLowerCase()}.example`, name: `Steward of ${code}`, password };
  const { userId } = must(await foundClub({ code, name: `Club ${code}`, steward }));
  return viewer({ userId, sessionVersion: 1 });
}

/** Invites and joins someone. */
export async function person(steward: Viewer, code: string, name: string, role: Role): Promise<Viewer> {
  const email = `${name.toLowerCase().replaceAll(' ', '.')}@${code.toLowerCase()}.example`;
  const { token } = must(await invite(steward, { club: code, email, role }));
  return viewer(must(await join({ token, address: '192.0.2.1', name, password })));
}

export interface Cast {
  readonly steward: Viewer;
  readonly author: Viewer;
  readonly member: Viewer;
  readonly officer: Viewer;
  readonly guest: Viewer;
}

export async function cast(code: string): Promise<Cast> {
  const steward = await club(code);
  return {
    steward,
    author: await person(steward, code, 'Ada Author', 'member'),
    member: await person(steward, code, 'Mo Member', 'member'),
    officer: await person(steward, code, 'Olu Officer', 'safetyOfficer'),
    guest: await person(steward, code, 'Gil Guest', 'guest'),
  };
}
