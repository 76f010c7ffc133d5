// Names to the ids on a page, fetched together.
import type { Database } from '@/lib/store/database';
import { namesOf } from '@/lib/store/people/users';
import type { PersonView } from './views/heads';

export type People = (userId: string) => PersonView;

/** Looks the people up in one query. */
export async function peopleOf(db: Database, ids: Iterable<string>): Promise<People> {
  return peopleNamed(await namesOf(db, ids));
}

/** People whose names are at hand. */
export function peopleNamed(names: ReadonlyMap<string, string>): People {
  return (userId) => ({ userId, name: names.get(userId) ?? 'Unknown' });
}
