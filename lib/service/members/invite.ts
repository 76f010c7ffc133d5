// Inviting someone by e-mail address to a role, and taking an invitation back.
import { invitationExpiry, newToken, tokenHash } from '@/lib/access/tokens';
import { appendEvent } from '@/lib/store/ledger';
import { createInvitation, withdrawInvitations } from '@/lib/store/people/invitations';
import { isMemberByEmail, lockClub } from '@/lib/store/people/members';
import { change } from '../change';
import type { Contract } from '../contract';
import * as inputs from '../inputs/members';
import { done, refused } from '../result';
import { rationed } from '../sign-in/slowed';
import { clubCase } from '../use-case';

export const invite: Contract['invite'] = clubCase(
  'members.change',
  inputs.invite,
  ({ viewer, clubId }, { email, role }) =>
    rationed({ pace: 'inviting', parts: [clubId] }, () =>
      change(async (tx) => {
        await lockClub(tx, clubId);
        if (await isMemberByEmail(tx, clubId, email)) return refused('invitation.member');
        // The newest invitation of an address is the only one that works.
        await withdrawInvitations(tx, { clubId, email });
        const token = newToken();
        const expiresAt = invitationExpiry(new Date());
        const invitation = await createInvitation(tx, {
          clubId,
          email,
          role,
          tokenHash: tokenHash(token),
          invitedById: viewer.userId,
          expiresAt,
        });
        // The address stays out of the ledger, which nobody can edit: it belongs to someone who has not joined.
        await appendEvent(tx, {
          clubId,
          actorId: viewer.userId,
          kind: 'member.invited',
          subject: invitation.id,
          data: { role, expiresAt: expiresAt.toISOString() },
        });
        return done({ invitationId: invitation.id, token, expiresAt: expiresAt.toISOString() });
      }),
    ),
);

export const withdrawInvitation: Contract['withdrawInvitation'] = clubCase(
  'members.change',
  inputs.withdrawInvitation,
  ({ viewer, clubId }, { invitationId }) =>
    change(async (tx) => {
      await lockClub(tx, clubId);
      const met = await withdrawInvitations(tx, { clubId, id: invitationId });
      if (met.length === 0) return refused('invitation.notFound');
      await appendEvent(tx, {
        clubId,
        actorId: viewer.userId,
        kind: 'invitation.withdrawn',
        subject: invitationId,
        data: {},
      });
      return done({});
    }),
);
