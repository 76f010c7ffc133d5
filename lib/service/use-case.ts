// The frame around every use case: reads the input, asks who the viewer is in the club concerned, denies by default, and
// turns an unforeseen error into a reference number.
import { randomBytes } from 'node:crypto';
import type { z } from 'zod';
import { type Action, may, type Role } from '@/lib/access/policy';
import { reader } from '@/lib/store/database';
import { type DesignAccess, designForPerson } from '@/lib/store/designs/access';
import { clubOfPerson } from '@/lib/store/people/members';
import type { OpenCase, UseCase } from './contract';
import { type Result, refused } from './result';
import type { Viewer } from './viewer';

/** How a use case is guarded; tests walk this list to show that none is forgotten. */
export interface Guard {
  readonly about: 'design' | 'club' | 'part' | 'self' | 'anyone';
  readonly action: Action | null;
}

const guards = new WeakMap<object, Guard>();

/** The guard of a use case; undefined for a function that is none. */
export function guardOf(useCase: object): Guard | undefined {
  return guards.get(useCase);
}

export interface DesignContext {
  readonly viewer: Viewer;
  readonly design: DesignAccess;
  readonly role: Role;
}

export interface ClubContext {
  readonly viewer: Viewer;
  readonly clubId: string;
  readonly code: string;
  readonly clubName: string;
  readonly role: Role;
}

/** A use case about one design, named in its input. A design of another club is not found. */
export function designCase<S extends z.ZodType<{ design: string }>, T>(
  action: Action,
  schema: S,
  work: (context: DesignContext, input: z.output<S>) => Promise<Result<T>>,
): UseCase<S, T> {
  return guarded({ about: 'design', action }, async (viewer, raw) => {
    if (viewer === null) return refused('viewer.none');
    const input = schema.safeParse(raw);
    if (!input.success) return invalid(input.error);
    return forDesign(action, viewer, input.data.design, (context) => work(context, input.data));
  });
}

/** A use case about a part of a design (a thread, a signature): `numberOf` finds the design it belongs to. */
export function partCase<S extends z.ZodType, T>(
  action: Action,
  schema: S,
  numberOf: (input: z.output<S>) => Promise<string | null>,
  notFound: 'thread.notFound' | 'signoff.notFound',
  work: (context: DesignContext, input: z.output<S>) => Promise<Result<T>>,
): UseCase<S, T> {
  return guarded({ about: 'part', action }, async (viewer, raw) => {
    if (viewer === null) return refused('viewer.none');
    const input = schema.safeParse(raw);
    if (!input.success) return invalid(input.error);
    const number = await numberOf(input.data);
    if (number === null) return refused(notFound);
    const result = await forDesign(action, viewer, number, (context) => work(context, input.data));
    // A stranger must not learn from the code that the part exists.
    return !result.ok && result.error.code === 'design.notFound' ? refused(notFound) : result;
  });
}

/** A use case about a club, named in its input. A club of which the viewer is no member is not found. */
export function clubCase<S extends z.ZodType<{ club: string }>, T>(
  action: Action,
  schema: S,
  work: (context: ClubContext, input: z.output<S>) => Promise<Result<T>>,
): UseCase<S, T> {
  return guarded({ about: 'club', action }, async (viewer, raw) => {
    if (viewer === null) return refused('viewer.none');
    const input = schema.safeParse(raw);
    if (!input.success) return invalid(input.error);
    const club = await clubOfPerson(reader(), input.data.club, viewer.userId);
    if (club === null) return refused('club.notFound');
    if (!may(club.role, action)) return refused('viewer.role');
    const { clubId, code, name, role } = club;
    return work({ viewer, clubId, code, clubName: name, role }, input.data);
  });
}

/** A use case about the viewer's own account. */
export function ownCase<S extends z.ZodType, T>(
  schema: S,
  work: (viewer: Viewer, input: z.output<S>) => Promise<Result<T>>,
): UseCase<S, T> {
  return guarded({ about: 'self', action: null }, async (viewer, raw) => {
    if (viewer === null) return refused('viewer.none');
    const input = schema.safeParse(raw);
    return input.success ? work(viewer, input.data) : invalid(input.error);
  });
}

/** A use case for anyone: signing in, joining. It must guard itself. */
export function openCase<S extends z.ZodType, T>(
  schema: S,
  work: (input: z.output<S>) => Promise<Result<T>>,
): OpenCase<S, T> {
  const framed: OpenCase<S, T> = (raw) =>
    sheltered(async () => {
      const input = schema.safeParse(raw);
      return input.success ? work(input.data) : invalid(input.error);
    });
  guards.set(framed, { about: 'anyone', action: null });
  return framed;
}

function guarded<S extends z.ZodType, T>(
  guard: Guard,
  work: (viewer: Viewer | null, raw: z.input<S>) => Promise<Result<T>>,
): UseCase<S, T> {
  const framed: UseCase<S, T> = (viewer, raw) => sheltered(() => work(viewer, raw));
  guards.set(framed, guard);
  return framed;
}

async function forDesign<T>(
  action: Action,
  viewer: Viewer,
  number: string,
  work: (context: DesignContext) => Promise<Result<T>>,
): Promise<Result<T>> {
  const design = await designForPerson(number, viewer.userId);
  if (design === null) return refused('design.notFound');
  if (!may(design.role, action)) return refused('viewer.role');
  return work({ viewer, design, role: design.role });
}

/** Issues as sentences by the name of the input they are about; the first of each counts. */
function invalid(error: z.ZodError): Result<never> {
  const fields: Record<string, string> = {};
  for (const issue of error.issues) fields[issue.path.join('.')] ??= issue.message;
  return refused('input.invalid', { fields });
}

/** Runs the work; an unforeseen error is written to the log under a reference and told to nobody else. */
async function sheltered<T>(work: () => Promise<Result<T>>): Promise<Result<T>> {
  try {
    return await work();
  } catch (error) {
    const reference = randomBytes(4).toString('hex');
    console.error(
      JSON.stringify({
        at: new Date().toISOString(),
        reference,
        error: error instanceof Error ? (error.stack ?? error.message) : String(error),
      }),
    );
    return refused('service.fault', {
      sentence: `Something went wrong on our side; nothing was changed. Reference ${reference}.`,
    });
  }
}
