// Ending every session of a person, on every device, at once.
import { reader } from '@/lib/store/database';
import { endSessions } from '@/lib/store/people/users';
import type { Contract } from '../contract';
import { done, refused } from '../result';

export const signOutEverywhere: Contract['signOutEverywhere'] = async (viewer) => {
  if (viewer === null) return refused('viewer.none');
  await endSessions(reader(), viewer.userId);
  return done({});
};
