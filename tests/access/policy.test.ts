import { describe, expect, it } from 'vitest';
import { type Action, may, policy, roles } from '@/lib/access/policy';

// Independent: the matrix written out by hand, S steward, O safety officer, M member, G guest.
const matrix: Readonly<Record<Action, string>> = {
  'club.read': 'SOMG',
  'design.read': 'SOMG',
  'members.read': 'SOMG',
  'draft.read': 'SOM',
  'draft.edit': 'SOM',
  'coupons.read': 'SOMG',
  'coupons.enter': 'SOM',
  'design.create': 'SOM',
  'revision.publish': 'SOM',
  'revision.reassess': 'SOM',
  'thread.write': 'SOM',
  'finding.dispose': 'SOM',
  'signOff.sign': 'SOM',
  'signOff.withdraw': 'SOM',
  'ledger.read': 'SOM',
  'members.change': 'S',
};
const letters = { steward: 'S', safetyOfficer: 'O', member: 'M', guest: 'G' } as const;

describe('the policy', () => {
  it('allows each role exactly what the matrix says', () => {
    for (const action of Object.keys(policy) as Action[])
      for (const role of roles)
        expect(may(role, action), `${role} ${action}`).toBe(matrix[action].includes(letters[role]));
  });

  it('allows nothing to whoever has no role', () => {
    for (const action of Object.keys(policy) as Action[]) expect(may(null, action)).toBe(false);
  });

  it('lets a guest read and change nothing', () => {
    const allowed = (Object.keys(policy) as Action[]).filter((a) => may('guest', a));
    expect(allowed.every((a) => a.endsWith('.read'))).toBe(true);
  });
});
