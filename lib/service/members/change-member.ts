// Changing a member's role and ending a membership; a club always keeps a steward.
import type { Role } from '@/lib/access/policy';
import type { Database } from '@/lib/store/database';
import { appendEvent } from '@/lib/store/ledger';
import {
  changeRoleRow,
  endMembershipRow,
  lockClub,
  membership,
  stewardCount,
} from '@/lib/store/people/members';
import { change } from '../change';
import type { Contract } from '../contract';
import * as inputs from '../inputs/members';
import { done, type Result, refused } from '../result';
import { clubCase } from '../use-case';

export const endMembership: Contract['endMembership'] = clubCase(
  'members.change',
  inputs.endMembership,
  ({ viewer, clubId }, { userId }) =>
    change(async (tx) => {
      const member = await changeable(tx, clubId, userId, null);
      if (!member.ok) return member;
      await endMembershipRow(tx, member.value.id);
      await appendEvent(tx, {
        clubId,
        actorId: viewer.userId,
        kind: 'member.ended',
        subject: userId,
        data: { role: member.value.role },
      });
      return done({});
    }),
);

export const changeRole: Contract['changeRole'] = clubCase(
  'members.change',
  inputs.changeRole,
  ({ viewer, clubId }, { userId, role }) =>
    change(async (tx) => {
      const member = await changeable(tx, clubId, userId, role);
      if (!member.ok) return member;
      await changeRoleRow(tx, member.value.id, role);
      await appendEvent(tx, {
        clubId,
        actorId: viewer.userId,
        kind: 'member.roleChanged',
        subject: userId,
        data: { from: member.value.role, to: role },
      });
      return done({});
    }),
);

/** The membership, with the club locked; refused when it would leave the club without a steward. */
async function changeable(
  tx: Database,
  clubId: string,
  userId: string,
  next: Role | null,
): Promise<Result<{ readonly id: string; readonly role: Role }>> {
  await lockClub(tx, clubId);
  const member = await membership(tx, clubId, userId);
  if (member === null || member.endedAt !== null) return refused('member.notFound');
  const leaves = member.role === 'steward' && next !== 'steward';
  if (leaves && (await stewardCount(tx, clubId)) <= 1) return refused('members.lastSteward');
  return done({ id: member.id, role: member.role });
}
