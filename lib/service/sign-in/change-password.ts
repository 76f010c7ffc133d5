// Changing one's own password: proved by the present one, and every session there was ends with it.
import { passwordProblem } from '@/lib/access/password-choice';
import { hashPassword, passwordFits } from '@/lib/access/passwords';
import { reader } from '@/lib/store/database';
import { accountById, keepPassword } from '@/lib/store/people/users';
import type { Contract } from '../contract';
import * as inputs from '../inputs/members';
import { done, refused } from '../result';
import { ownCase } from '../use-case';
import { slowed } from './slowed';

export const changePassword: Contract['changePassword'] = ownCase(
  inputs.changePassword,
  async (viewer, { current, next }) => {
    const { userId } = viewer;
    const proved = await slowed([{ pace: 'signing', parts: [userId] }], async () => {
      const account = await accountById(reader(), userId);
      if (await passwordFits(current, account?.passwordHash ?? null)) return done(null);
      return refused('signin.refused', { fields: { current: 'This is not your present password.' } });
    });
    if (!proved.ok) return proved;
    const problem = passwordProblem(next, viewer);
    if (problem !== null) return refused('join.password', { fields: { next: problem } });
    const sessionVersion = await keepPassword(reader(), userId, await hashPassword(next));
    return done({ userId, sessionVersion });
  },
);
