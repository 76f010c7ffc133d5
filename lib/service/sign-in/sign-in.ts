// Signing in with e-mail and password. Unknown e-mail and wrong password look and take the same.
import { passwordFits } from '@/lib/access/passwords';
import { reader } from '@/lib/store/database';
import { accountByEmail } from '@/lib/store/people/users';
import type { Contract } from '../contract';
import * as inputs from '../inputs/members';
import { done, refused } from '../result';
import { openCase } from '../use-case';
import { slowed } from './slowed';

export const signIn: Contract['signIn'] = openCase(inputs.signIn, ({ email, password, address }) =>
  slowed(
    [
      { pace: 'account', parts: [email, address] },
      { pace: 'address', parts: [address] },
    ],
    async () => {
      const account = await accountByEmail(reader(), email);
      const fits = await passwordFits(password, account?.passwordHash ?? null);
      if (account === null || !fits) return refused('signin.refused');
      return done({ userId: account.id, sessionVersion: account.sessionVersion });
    },
  ),
);
