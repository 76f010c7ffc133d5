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

describe('a drive that drops out', () => {
  // By hand: 7 cells cut off at 3 V rest at 21 V. The peak draws 3.1 A through 63 mΩ of cells, 7 mΩ of leads at 0.8 m of
  // 4 mm² twice and warm, 0.5 mΩ of connector: 0.07 Ω, so 0.2 V are lost (independent).
  it('is judged by the voltage under the peak load, not at rest', () => {
    const v = check(lifter, 'drive.minVoltage').capacity ?? Number.NaN;
    expect(v).toBeLessThan(21);
    expect(v).toBeCloseTo(21 - 3.118 * (0.063 + (2 * 1.7241e-8 * 1.1572 * 0.8) / 4e-6 + 0.0005), 3);
    expect(check(changed(lifter, { 'drive.minVoltage': 20.9 }), 'drive.minVoltage').status).toBe('below');
  });

  it('is not assessed where the sag is not known, whatever the voltage at rest', () => {
    const c = check(changed(lifter, { 'supply.cellResistance': null }), 'drive.minVoltage');
    expect(c.status).toBe('not assessed');
    expect(c.missing).toMatch(/^Sag is not known/);
  });
});

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
