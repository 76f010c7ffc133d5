// The kinds of events in the ledger, in words.

export const ledgerKinds = {
  'club.founded': 'Club founded',
  'member.invited': 'Member invited',
  'invitation.withdrawn': 'Invitation withdrawn',
  'member.joined': 'Member joined',
  'member.roleChanged': 'Role changed',
  'member.ended': 'Membership ended',
  'design.opened': 'Design opened',
  'coupons.entered': 'Entered a coupon test',
  'coupons.withdrawn': 'Withdrew a coupon test',
  'draft.hand': 'Took a hand in the draft',
  'draft.replaced': 'Draft started anew from a revision',
  'revision.published': 'Revision published',
  'revision.assessed': 'Revision assessed by a newer method',
  'thread.opened': 'Thread opened',
  'thread.replied': 'Remark added',
  'thread.resolved': 'Thread resolved',
  'thread.reopened': 'Thread reopened',
  'finding.disposed': 'Finding decided',
  'signOff.signed': 'Hold point signed',
  'signOff.withdrawn': 'Signature withdrawn',
} as const;

export type LedgerKind = keyof typeof ledgerKinds;

/** A kind in words; one that a later version wrote keeps its key. */
export function ledgerLabel(kind: string): string {
  return Object.hasOwn(ledgerKinds, kind) ? ledgerKinds[kind as LedgerKind] : kind;
}
