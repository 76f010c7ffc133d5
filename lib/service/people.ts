// Names to the ids on a page, fetched together.
import type { Database } from '@/lib/store/database';
import { namesOf } from '@/lib/store/people/users';
import type { PersonView } from './views/common';

export type People = (userId: string) => PersonView;

/** Looks the people up in one query. */
export async function peopleOf(db: Database, ids: Iterable<string>): Promise<People> {
  const names = await namesOf(db, ids);
  return (userId) => ({ userId, name: names.get(userId) ?? 'Unknown' });
}
