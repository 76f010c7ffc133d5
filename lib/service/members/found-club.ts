// Founding a club with its first steward. Called by whoever runs the service, from the command line; no page leads here.
import { z } from 'zod';
import { passwordProblem } from '@/lib/access/password-choice';
import { hashPassword } from '@/lib/access/passwords';
import { ledgerStart } from '@/lib/review/ledger';
import { isDuplicate, reader } from '@/lib/store/database';
import { appendEvent } from '@/lib/store/ledger';
import { clubCount, createClub, startMembership } from '@/lib/store/people/members';
import { accountByEmail, createAccount } from '@/lib/store/people/users';
import { change } from '../change';
import { clubCode, line } from '../inputs/terms';
import { done, type Result, refused } from '../result';
import { openCase } from '../use-case';

const founding = z.object({
  code: clubCode,
  name: line('Name of the club', 80),
  steward: z.object({
    email: z.string().trim().toLowerCase().pipe(z.email()),
    name: line('Name', 80),
    password: z.string(),
  }),
});

export const foundClub = openCase(
  founding,
  async ({
    code,
    name,
    steward,
  }): Promise<Result<{ readonly clubCode: string; readonly userId: string }>> => {
    const known = await accountByEmail(reader(), steward.email);
    const problem = known === null ? passwordProblem(steward.password, steward) : null;
    if (problem !== null) return refused('join.password', { fields: { password: problem } });
    const passwordHash = known === null ? await hashPassword(steward.password) : '';
    try {
      return await change(async (tx) => {
        const club = await createClub(tx, { code, name, ledgerHash: ledgerStart(code) });
        const { email } = steward;
        const account = known ?? (await createAccount(tx, { email, name: steward.name, passwordHash }));
        await startMembership(tx, club.id, account.id, 'steward');
        await appendEvent(tx, {
          clubId: club.id,
          actorId: account.id,
          kind: 'club.founded',
          subject: code,
          data: { name },
        });
        return done({ clubCode: code, userId: account.id });
      });
    } catch (error) {
      if (isDuplicate(error)) return refused('club.taken');
      throw error;
    }
  },
);

/** Whether any club exists; a seed leaves a database with one alone. */
export async function anyClub(): Promise<boolean> {
  return (await clubCount(reader())) > 0;
}
