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

describe('a bench supply', () => {
  const bench: Changes = {
    'supply.kind': 'bench',
    'supply.benchVoltage': 24,
    'supply.benchCurrent': 2,
  };

  it('is judged by its current limit, not by a matched load that no bench supply reaches', () => {
    const { checks } = assess(changed(lifter, bench));
    expect(checks.some((c) => c.key === 'supply.power')).toBe(false);
    expect(checks.find((c) => c.key === 'supply.source')?.status).toBe('below');
  });
});

describe('a disconnect', () => {
  it('must break what limits and fuse let the drive draw, not what the duty takes', () => {
    const c = check(lifter, 'supply.disconnect');
    expect(c.demand).toBe(15);
    expect(check(changed(lifter, { 'supply.disconnectRating': 10 }), 'supply.disconnect').status).toBe(
      'below',
    );
    // Without a limit in the drive the fuse of 30 A is what remains.
    expect(check(changed(lifter, { 'drive.batteryCurrentLimit': null }), 'supply.disconnect').demand).toBe(
      30,
    );
  });

  it('is not assessed where nothing limits the current', () => {
    const c = check(
      changed(lifter, { 'drive.batteryCurrentLimit': null, 'supply.fuse': null }),
      'supply.disconnect',
    );
    expect(c.status).toBe('not assessed');
    expect(c.missing).toMatch(/Neither a battery current limit nor a fuse/);
  });
});

describe('a drive that drops out', () => {
  // By hand: 7 cells cut off at 3 V rest at 21 V. The peak draws 3.0 A (as the sheet says) through 63 mΩ of cells, 7 mΩ of leads at 0.8 m of
  // 4 mm² twice and warm, 0.5 mΩ of each of three connectors: 0.07 Ω, so 0.2 V are lost (independent).
  it('is judged by the voltage under the peak load, not at rest', () => {
    const v = check(lifter, 'drive.minVoltage').capacity ?? Number.NaN;
    expect(v).toBeLessThan(21);
    const drawn = check(lifter, 'supply.connector').demand ?? Number.NaN;
    expect(drawn).toBeCloseTo(3.0, 1);
    expect(v).toBeCloseTo(21 - drawn * (0.063 + (2 * 1.7241e-8 * 1.1572 * 0.8) / 4e-6 + 3 * 0.0005), 3);
    expect(check(changed(lifter, { 'drive.minVoltage': 20.9 }), 'drive.minVoltage').status).toBe('below');
  });

  it('is not assessed where the sag is not known, whatever the voltage at rest', () => {
    const c = check(changed(lifter, { 'supply.cellResistance': null }), 'drive.minVoltage');
    expect(c.status).toBe('not assessed');
    expect(c.missing).toMatch(/^Sag is not known/);
  });
});

describe('a regenerative limit that is not entered', () => {
  const found = (changes: Changes) =>
    assess(changed(lifter, changes)).findings.find((f) => f.rule === 'regeneration-above-charge');

  it('is not taken as none: nobody knows what goes back into the pack', () => {
    expect(found({ 'drive.regenCurrentLimit': null })?.class).toBe('minor');
    expect(found({ 'drive.regenCurrentLimit': null })?.text).toMatch(/not entered/);
    expect(found({ 'drive.regenCurrentLimit': 0 })).toBeUndefined();
  });
});

describe('friction that the catalogue does not know', () => {
  // TPU on carbon-fibre polyamide, dry: no coefficient in the catalogue, so 0.7 stands for the stage.
  const dry: Changes = {
    'train.stages.s4.wheel.material': 'tpu95a_fdm',
    'train.stages.s4.lubrication': 'dry',
  };
  const known = assess(lifter);
  const unknown = assess(changed(lifter, dry));
  const figure = (a: typeof known, key: string) => a.figures.find((f) => f.key === key)?.value ?? Number.NaN;
  const stage4 = figure(known, 'train.stages.s4.efficiency');

  it('takes as much off the torque for the usual move as it adds to the motor’s', () => {
    const of = (a: typeof known) => a.checks.find((c) => c.key === 'output.move');
    expect(figure(unknown, 'train.efficiency')).toBeNaN();
    expect((of(unknown)?.capacity ?? 0) / (of(known)?.capacity ?? 1)).toBeCloseTo(0.7 / stage4, 9);
    expect(of(unknown)?.caveat).toMatch(/0\.7 is assumed/);
  });

  it('warms the winding in the moves of the duty as well as in the hold', () => {
    // Without the weakening of its magnets, which asks for more current still where it is warmer.
    const left = (changes: Changes) =>
      105 - (check(changed(lifter, { ...changes, 'motor.magnets': null }), 'motor.winding').capacity ?? 0);
    expect(left(dry) / left({})).toBeCloseTo((stage4 / 0.7) ** 2, 6);
  });
});

describe('a winding', () => {
  it('is warmed by rests in which the load is held, up to the longest hold each', () => {
    // 8 s of move and 30 s of rest, held throughout: the effective torque is the holding torque and a little of
    // acceleration; held for none of it, √(8/38) of that (independent).
    const rms = (changes: Changes) =>
      assess(changed(lifter, changes)).figures.find((f) => f.key === 'duty.effectiveTorque')?.value ?? 0;
    expect(rms({})).toBeGreaterThan(107);
    expect(rms({}) / 107).toBeCloseTo(1, 2);
    expect(rms({ 'duty.holdTime': 0 }) / 107).toBeCloseTo(Math.sqrt(8 / 38), 2);
    expect(rms({ 'duty.holdTime': 15 }) / 107).toBeCloseTo(Math.sqrt(23 / 38), 2);
  });

  it('asks twice as much where its thermal data are a guess that is true within a factor of two', () => {
    const measured = check(lifter, 'motor.winding');
    const guessed = check(changed(lifter, { 'motor.windingToCase': null }), 'motor.winding');
    expect([measured.required, guessed.required]).toEqual([1.2, 2.4]);
    expect(guessed.requiredFrom).toMatch(/guessed from the mass/);
    // The guess of 1.05 kg entered as if measured, 0.35 × 1.05^(−2/3) K/W, and a hold that leaves between 1.2 and 2.4.
    const winding = (T: number, R: number | null) =>
      check(changed(lifter, { 'duty.holdTorque': T, 'motor.windingToCase': R }), 'motor.winding');
    const same = 0.35 * 1.05 ** (-2 / 3);
    let T = 107;
    while ((winding(T, same).factor ?? 0) > 2) T *= 1.05;
    expect(winding(T, same)).toMatchObject({ status: 'holds' });
    expect(winding(T, null)).toMatchObject({ status: 'below' });
    expect(winding(T, null).factor).toBeCloseTo(winding(T, same).factor ?? 0, 9);
  });

  it('says when the rotor’s share of the moves is left out of its warming', () => {
    const caveat = check(changed(lifter, { 'motor.rotorInertia': null }), 'motor.winding').caveat;
    expect(caveat).toMatch(/rotor’s inertia is not entered/);
    expect(check(lifter, 'motor.winding').caveat).toBeNull();
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
