// Joining by invitation: a newcomer chooses a password, a person with an account proves theirs.
import { passwordProblem } from '@/lib/access/password-choice';
import { hashPassword, passwordFits } from '@/lib/access/passwords';
import { roleLabels } from '@/lib/access/policy';
import { tokenHash } from '@/lib/access/tokens';
import { reader } from '@/lib/store/database';
import { appendEvent } from '@/lib/store/ledger';
import { type KeptInvitation, markInvitationUsed, openInvitation } from '@/lib/store/people/invitations';
import { lockClub, membership, startMembership } from '@/lib/store/people/members';
import { type Account, accountByEmail, createAccount } from '@/lib/store/people/users';
import { change } from '../change';
import type { Contract } from '../contract';
import * as inputs from '../inputs/members';
import { done, type Result, refused } from '../result';
import { slowed } from '../sign-in/slowed';
import { openCase } from '../use-case';

export const invitationByToken: Contract['invitationByToken'] = openCase(
  inputs.invitationByToken,
  ({ token, address }) =>
    slowed([{ pace: 'invitation', parts: [address] }], async () => {
      const invitation = await usable(token);
      if (!invitation.ok) return invitation;
      const { clubName, clubCode, email, role, expiresAt } = invitation.value;
      return done({
        clubName,
        clubCode,
        email,
        role,
        roleLabel: roleLabels[role],
        expiresAt: expiresAt.toISOString(),
        known: (await accountByEmail(reader(), email)) !== null,
      });
    }),
);

export const join: Contract['join'] = openCase(inputs.join, async ({ token, address, name, password }) => {
  const invitation = await slowed([{ pace: 'invitation', parts: [address] }], () => usable(token));
  if (!invitation.ok) return invitation;
  const { email } = invitation.value;
  const account = await accountByEmail(reader(), email);
  if (account !== null) {
    const proved = await slowed([{ pace: 'account', parts: [email, address] }], async () =>
      (await passwordFits(password, account.passwordHash)) ? done(null) : refused('signin.refused'),
    );
    return proved.ok ? enter(invitation.value, { account }) : proved;
  }
  const problem = passwordProblem(password, { email, name });
  if (problem !== null) return refused('join.password', { fields: { password: problem } });
  return enter(invitation.value, { name, passwordHash: await hashPassword(password) });
});

async function usable(token: string): Promise<Result<KeptInvitation>> {
  const invitation = await openInvitation(reader(), tokenHash(token));
  if (invitation === null) return refused('invitation.notFound');
  return invitation.expiresAt > new Date() ? done(invitation) : refused('invitation.expired');
}

type Entrant = { readonly account: Account } | { readonly name: string; readonly passwordHash: string };

function enter({ id, clubId, clubCode, email, role }: KeptInvitation, entrant: Entrant) {
  return change(async (tx) => {
    await lockClub(tx, clubId);
    if (!(await markInvitationUsed(tx, id))) return refused('invitation.notFound');
    const account = 'account' in entrant ? entrant.account : await createAccount(tx, { email, ...entrant });
    const present = await membership(tx, clubId, account.id);
    if (present !== null && present.endedAt === null) return refused('invitation.member');
    await startMembership(tx, clubId, account.id, role);
    await appendEvent(tx, {
      clubId,
      actorId: account.id,
      kind: 'member.joined',
      subject: account.id,
      data: { invitation: id, role },
    });
    return done({ userId: account.id, sessionVersion: account.sessionVersion, clubCode });
  });
}
