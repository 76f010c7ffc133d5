// The people of a club and its open invitations.
import { may, roleLabels } from '@/lib/access/policy';
import { reader } from '@/lib/store/database';
import { openInvitations } from '@/lib/store/people/invitations';
import { membersOf } from '@/lib/store/people/members';
import type { Contract } from '../contract';
import * as inputs from '../inputs/members';
import { done } from '../result';
import { clubCase } from '../use-case';

export const members: Contract['members'] = clubCase('members.read', inputs.members, async (context) => {
  const { clubId, code, clubName, role } = context;
  const mayChange = may(role, 'members.change');
  const rows = await membersOf(reader(), clubId);
  const invitations = mayChange ? await openInvitations(reader(), clubId) : [];
  const nameOf = (id: string) => rows.find((m) => m.userId === id)?.name ?? 'Unknown';
  return done({
    club: { code, name: clubName },
    role,
    mayChange,
    members: rows.map((m) => ({
      userId: m.userId,
      name: m.name,
      email: mayChange ? m.email : '',
      role: m.role,
      roleLabel: roleLabels[m.role],
      since: m.startedAt.toISOString(),
      endedAt: m.endedAt?.toISOString() ?? null,
    })),
    invitations: invitations.map((i) => ({
      invitationId: i.id,
      email: i.email,
      role: i.role,
      invitedBy: nameOf(i.invitedById),
      expiresAt: i.expiresAt.toISOString(),
    })),
  });
});
