// Who may do what: the one table of roles and actions. What is not in it is denied.

export const roleLabels = {
  steward: 'Steward',
  safetyOfficer: 'Safety officer',
  member: 'Member',
  guest: 'Guest',
} as const;

export type Role = keyof typeof roleLabels;

export const roles = ['steward', 'safetyOfficer', 'member', 'guest'] as const satisfies readonly Role[];

const everyone = roles;
const working = ['steward', 'safetyOfficer', 'member'] as const;

export const policy = {
  'club.read': everyone,
  'design.read': everyone,
  'members.read': everyone,
  'draft.read': working,
  'draft.edit': working,
  'coupons.read': everyone,
  'coupons.enter': working,
  'design.create': working,
  'revision.publish': working,
  'revision.reassess': working,
  'thread.write': working,
  'finding.dispose': working,
  'signOff.sign': working,
  'signOff.withdraw': working,
  'ledger.read': working,
  'members.change': ['steward'],
} as const satisfies Record<string, readonly Role[]>;

export type Action = keyof typeof policy;

/** Whether a role may do an action; no role may do nothing. */
export function may(role: Role | null, action: Action): boolean {
  if (role === null) return false;
  const allowed: readonly Role[] = policy[action];
  return allowed.includes(role);
}
