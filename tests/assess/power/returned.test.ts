// What a move gives back, and force and reach of the arm, each against a count of its own.
import { describe, expect, it } from 'vitest';
import { swingArm } from '@/lib/design/starters/swing-arm';
import { type Changes, changed, worked } from './worked';

const of = (changes: Changes = {}) => worked(changed(swingArm, changes));
const level = { 'duty.gravity': false } as const;
const bench = {
  'supply.kind': 'bench',
  'supply.benchVoltage': 24,
  'supply.benchCurrent': 10,
} as const;

describe('the usual move of the arm', () => {
  it('in the level plane gives back what load and rotor have in speed', () => {
    const w = of(level);
    // 90° in 1.5 s by thirds: 1.5 × 90°/1.5 s at the peak.
    const omega = (1.5 * Math.PI) / 2 / 1.5;
    const load = (w.train.outputInertia.value * omega ** 2) / 2;
    const rotor = (880e-7 * (w.train.ratio.value * omega) ** 2) / 2;
    const eta = w.train.efficiency?.value ?? Number.NaN;
    expect(w.figure('drive.returnedEnergy').value).toBeCloseTo(eta * load + rotor, 9);
  });

  it('lowered gives back less than its weight gives up, and more than nothing', () => {
    const [up, down] = [of(level), of()].map((w) => w.figure('drive.returnedEnergy').value ?? Number.NaN);
    // The weight's greatest torque over an arc of 90° about level: 2 T sin 45°.
    const weight = 2 * (1.2 * 0.29 + 2.5 * 0.6) * 9.80665 * Math.SQRT1_2;
    expect((down ?? 0) - (up ?? 0)).toBeGreaterThan(0.5 * weight);
    expect((down ?? 0) - (up ?? 0)).toBeLessThan(weight);
  });

  it('is not assessed without the rotor’s inertia', () => {
    expect(of({ 'motor.rotorInertia': null }).figure('drive.returnedEnergy').missing).toMatch(/inertia/);
  });
});

describe('what takes the energy', () => {
  it('of a pack is its charge rate: 1 × 5 A·h bear 5 A', () => {
    expect(of({ 'drive.regenCurrentLimit': 5 }).check('supply.charge')).toMatchObject({
      demand: 5,
      capacity: 5,
      status: 'holds',
    });
    expect(of({ 'supply.chargeRate': null }).check('supply.charge').status).toBe('not assessed');
  });

  it('of a bench supply that cannot sink are the capacitors alone, charged by ½ C (U² − U₀²)', () => {
    const w = of(bench);
    const E = w.figure('drive.returnedEnergy').value ?? Number.NaN;
    const c = w.check('drive.busVoltage');
    expect(c.status).toBe('below');
    expect(0.5e-3 * ((c.demand ?? 0) ** 2 - 24 ** 2)).toBeCloseTo(E, 9);
    expect(c.capacity).toBe(28);
  });

  it('is the bench supply where it can, and a brake resistor where there is one', () => {
    const keys = (changes: Changes) => of({ ...bench, ...changes }).work.checks.map((c) => c.key);
    expect(keys({ 'supply.benchSinks': true })).not.toContain('drive.busVoltage');
    const fitted = { 'drive.brakeResistor': 10, 'drive.brakeResistorPower': 20 };
    expect(keys(fitted)).not.toContain('drive.busVoltage');
    const w = of({ ...bench, ...fitted });
    expect(w.check('drive.brakePower').capacity).toBeCloseTo(28 ** 2 / 10, 9);
    const E = w.figure('drive.returnedEnergy').value ?? Number.NaN;
    expect(w.check('drive.brakeMean').demand).toBeCloseTo(E / 5.5, 9);
    expect(of({ ...bench, 'drive.brakeResistor': 10 }).check('drive.brakeMean').status).toBe('not assessed');
  });
});

describe('people near the arm', () => {
  const forced = of().figure('drive.forced').value ?? Number.NaN;

  it('are clamped with the forced torque over the shorter arm: 90 mm at the stop', () => {
    expect(of().figure('output.stopForce').value).toBeCloseTo(forced / 0.09, 6);
    const pinch = of({ 'rig.peopleInReach': 'hands' }).check('output.pinch');
    // Published in ISO/TS 15066 (public copies): 140 N on a clamped hand, 65 N on the face.
    expect(pinch).toMatchObject({ capacity: 140, status: 'below' });
    expect(pinch.demand).toBeCloseTo(forced / 0.09, 6);
    expect(of({ 'rig.peopleInReach': 'body' }).check('output.pinch').capacity).toBe(65);
  });

  it('out of reach are held against no force', () => {
    for (const who of ['nobody', null] as const)
      expect(of({ 'rig.peopleInReach': who }).work.checks.some((c) => c.key === 'output.pinch')).toBe(false);
  });

  it('struck on a hand of 0.6 kg and 75 N/mm feel v √(m k)', () => {
    const w = of();
    const m_R = (w.train.outputInertia.value + 880e-7 * w.train.ratio.value ** 2) / 0.6 ** 2;
    const m = 1 / (1 / 0.6 + 1 / m_R);
    const v = (Math.PI / 2) * 0.6;
    expect(w.figure('output.contactForce').value).toBeCloseTo(v * Math.sqrt(m * 75e3), 6);
  });

  it('keep an arm’s reach beyond the arm where no screen stands', () => {
    expect(of().check('rig.keptClear').demand).toBeCloseTo(0.6 + 0.85, 12);
    expect(of({ 'rig.guard': true }).work.checks.some((c) => c.key === 'rig.keptClear')).toBe(false);
  });

  it('can be hit further off by what is flung off the tip', () => {
    const w = of();
    const v = w.figure('output.freeTipSpeed').value ?? Number.NaN;
    const far = 0.6 + (v / 9.80665) * Math.sqrt(v ** 2 + 2 * 9.80665);
    expect(w.figure('rig.thrown').value).toBeCloseTo(far, 9);
    expect(of({ 'duty.tipMass': 0 }).figure('rig.thrown').missing).toMatch(/no mass/);
  });
});
