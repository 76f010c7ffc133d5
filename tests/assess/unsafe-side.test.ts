// Where a blank field, a zero or a limit could pass for safety: each case once came out on the unsafe side.
import { describe, expect, it } from 'vitest';
import { assess } from '@/lib/assess/assess';
import type { Design } from '@/lib/design/document';
import { lifter } from '@/lib/design/starters/lifter';
import { type Changes, changed } from './power/worked';

function check(document: Design, key: string) {
  const found = assess(document).checks.find((c) => c.key === key);
  if (found === undefined) throw new Error(`no check ${key}`);
  return found;
}

describe('nothing asked of what has nothing left', () => {
  const racing: Changes = { 'duty.moveTime': 0.05, 'duty.restTime': 0 };

  it.each([
    ['a hold of no torque', { ...racing, 'duty.holdTorque': 0 }],
    ['a hold of no time', { ...racing, 'duty.holdTime': 0 }],
    [
      'an ambient at the winding’s limit',
      { 'duty.ambient': 60, 'motor.windingLimit': 60, 'duty.holdTorque': 0 },
    ],
  ] as const)('does not hold: %s on a winding that its moves alone bring to its limit', (_, changes) => {
    const winding = check(changed(lifter, changes), 'motor.winding');
    expect([winding.demand, winding.capacity]).toEqual([0, 0]);
    expect([winding.status, winding.factor]).toEqual(['below', 0]);
  });

  it('holds with a large factor where the duty asks nothing and room is left', () => {
    expect(check(changed(lifter, { 'duty.holdTorque': 0 }), 'motor.winding')).toMatchObject({
      status: 'holds',
      factor: 1e6,
    });
  });
});
