// From a session to the person behind it, read from the database at each request.
import { personWithClubs } from '@/lib/store/people/users';
import type { Contract } from '../contract';

/** Null when there is no session, the person is gone, or their sessions were ended since. */
export const viewerOf: Contract['viewerOf'] = async (session) => {
  if (session === null) return null;
  const rows = await personWithClubs(session.userId);
  const person = rows[0];
  if (person === undefined || person.sessionVersion !== session.sessionVersion) return null;
  return {
    userId: person.id,
    name: person.name,
    email: person.email,
    clubs: rows.flatMap(({ code, club, role }) =>
      code === null || club === null || role === null ? [] : [{ code, name: club, role }],
    ),
  };
};
