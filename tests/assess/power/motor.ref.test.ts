// Currents, voltage and heat of the motor against a maker's data sheet and a numerical count of their own.
import { describe, expect, it } from 'vitest';
import type { TrainWork } from '@/lib/assess/work';
import type { Design } from '@/lib/design/document';
import { swingArm } from '@/lib/design/starters/swing-arm';
import { type Changes, changed, plainTrain, worked } from './worked';

/** Motor straight on the output: ratio 1, no friction. */
function direct(document: Design): TrainWork {
  const traced = (value: number) => ({ value, from: 'practice:direct' });
  return {
    ...plainTrain(document),
    ratio: traced(1),
    efficiency: traced(1),
    drivingEfficiency: traced(1),
    motorTorquePeak: traced(document.duty.peakTorque),
    motorTorqueHold: traced(document.duty.holdTorque),
    motorSpeed: traced((document.duty.outputSpeed * Math.PI) / 180),
  };
}

const rpm = 6; // deg/s

describe('the nominal point of a 40 mm brushless motor', () => {
  // published: EC 40, 120 W, 24 V winding, data sheet of May 2013: 22.1 mN·m/A, 0.436 Ω, 0.443 A at no load,
  // nominal 120 mN·m, 9160 rpm, 5.78 A. The sheet allows for the warm winding; rtol 2 %.
  const design = changed(swingArm, {
    'motor.speedConstant': 60 / (2 * Math.PI * 0.0221),
    'motor.resistance': 436,
    'motor.noLoadCurrent': 0.443,
    'motor.noLoadVoltage': 24,
    'motor.secondNoLoadCurrent': null,
    'motor.magnets': null,
    'motor.windingLimit': 60,
    'duty.peakTorque': 0.12,
    'duty.outputSpeed': 9160 * rpm,
    'drive.convention': 'dc',
    'supply.kind': 'bench',
    'supply.benchVoltage': 24,
    'supply.benchCurrent': 20,
  });
  const at = worked(design, true, direct(design));

  it('takes the nominal current', () => {
    expect(Math.abs((at.figure('motor.peakCurrent').value ?? 0) / 5.78 - 1)).toBeLessThan(0.02);
  });

  it('has the torque constant printed', () => {
    expect(at.figure('motor.torqueConstant').value).toBeCloseTo(0.0221, 9);
  });

  it('needs about the nominal voltage at the nominal speed', () => {
    expect(Math.abs((at.check('motor.voltage').demand ?? 0) / 24 - 1)).toBeLessThan(0.02);
  });
});

describe('the winding in a hold', () => {
  // With a long rest the moves leave it cold, so that the hold alone warms it.
  const holding = (changes: Changes) =>
    changed(swingArm, {
      'duty.restTime': 86400,
      'motor.resistance': 900,
      'motor.magnets': null,
      'motor.caseToMount': null,
      ...changes,
    });

  it('reaches its limit exactly at the torque that the check names', () => {
    const first = worked(holding({ 'duty.holdTime': 60 }));
    const torque = first.check('motor.winding').holdsTo ?? Number.NaN;
    const again = worked(
      holding({ 'duty.holdTime': 60, 'duty.holdTorque': torque, 'duty.peakTorque': 4000 }),
    );
    expect(again.check('motor.winding').factor).toBeCloseTo(1, 2);
    expect(again.figure('motor.windingTemperature').value).toBeCloseTo(120 + 273.15, 0);
  });

  it('reaches it nearly there with magnets that weaken as the hold warms them: a fiftieth below', () => {
    const warm = { 'duty.holdTime': 60, 'motor.magnets': 'ferrite' };
    const torque = worked(holding(warm)).check('motor.winding').holdsTo ?? Number.NaN;
    const more = { ...warm, 'duty.holdTorque': torque, 'duty.peakTorque': 4000 };
    const factor = worked(holding(more)).check('motor.winding').factor ?? Number.NaN;
    expect(factor).toBeLessThan(1);
    expect(factor).toBeGreaterThan(0.9);
  });

  it('is bounded by two coupled warm lumps: not below them, and above by less than twice', () => {
    // independent: both lumps stepped by small times, the worst phase taken for all against the case.
    for (const holdTime of [5, 60, 600, 7200]) {
      const w = worked(holding({ 'duty.holdTime': holdTime }));
      const rise = w.check('motor.winding').demand ?? Number.NaN;
      const P = w.figure('motor.holdLoss').value ?? Number.NaN;
      const dt = 0.05;
      let winding = 0;
      let shell = 0;
      for (let t = 0; t < holdTime; t += dt) {
        const flow = (winding - shell) / 0.55;
        winding += ((P - flow) / 55) * dt;
        shell += ((flow - shell / 2.2) / 300) * dt;
      }
      // The worst phase stands as far again above the case as the mean.
      const worst = winding + (winding - shell);
      expect(rise).toBeGreaterThan(worst * 0.98);
      expect(rise).toBeLessThan(worst * 2);
    }
  });

  it('says so when its thermal data are guessed from the motor’s mass, and gives the scatter', () => {
    const guessed = worked(changed(swingArm, { 'motor.windingToCase': null })).check('motor.winding');
    expect(guessed.caveat).toMatch(/factor of 2/);
    expect((guessed.holdsFrom ?? 0) * Math.SQRT2).toBeCloseTo(guessed.holdsTo ?? 0, 9);
    expect(worked(swingArm).check('motor.winding').caveat).toBeNull();
    expect(worked(holding({})).check('motor.winding').caveat).toMatch(/magnets is not entered/);
  });

  it('gets no warmer by a shorter hold', () => {
    const at = (s: number) =>
      worked(holding({ 'duty.holdTime': s })).figure('motor.windingTemperature').value ?? 0;
    expect(at(10)).toBeLessThan(at(60));
    expect(at(60)).toBeLessThan(at(600));
  });
});

describe('a stall at the drive’s limit', () => {
  // independent: the winding stepped by small times against a case that stays as it is, at twice the copper loss.
  it('takes the winding to its limit in the time that a small-step count gives', () => {
    const w = worked(changed(swingArm, { 'motor.resistance': 100, 'drive.motorCurrentLimit': 69 }));
    const I = 69 * (Math.sqrt(3) / 2);
    const hot = (0.1 * (120 + 234.45)) / (20 + 234.45);
    const left = w.check('motor.winding').capacity ?? Number.NaN;
    let rise = 0;
    let t = 0;
    for (; rise < left; t += 1e-4) rise += ((2 * hot * I ** 2 - rise / 0.55) / 55) * 1e-4;
    const figure = w.figure('drive.stallTime').value ?? Number.NaN;
    expect(Math.abs(figure / t - 1)).toBeLessThan(0.002);
  });

  it('has no time where the winding settles below its limit first, and says why', () => {
    const mild = worked(changed(swingArm, { 'drive.motorCurrentLimit': 12 })).figure('drive.stallTime');
    expect(mild.value).toBeNull();
    expect(mild.missing).toMatch(/does not reach its limit/);
  });
});

describe('what is not entered', () => {
  it.each([
    ['motor.maxCurrent', 'motor.current'],
    ['motor.maxPower', 'motor.power'],
    ['drive.motorCurrentLimit', 'drive.motorCurrent'],
    ['drive.batteryCurrentLimit', 'drive.batteryCurrent'],
    ['drive.maxVoltage', 'drive.maxVoltage'],
    ['drive.minVoltage', 'drive.minVoltage'],
    ['supply.cells', 'motor.voltage'],
    ['supply.cellResistance', 'motor.voltage'],
    ['supply.leadArea', 'motor.voltage'],
    ['supply.leadLength', 'output.speedTorque'],
    ['supply.capacity', 'supply.source'],
    ['supply.leadArea', 'supply.leads'],
    ['supply.connectorRating', 'supply.connector'],
    ['supply.fuse', 'supply.fuse'],
    ['supply.fuse', 'supply.fuseLeads'],
    ['supply.disconnectRating', 'supply.disconnect'],
    ['output.stopTravel', 'output.stops'],
    ['rig.holdTorque', 'rig.hold'],
    ['motor.rotorInertia', 'output.move'],
    ['drive.motorCurrentLimit', 'output.move'],
  ])('leaves out %s: %s is not assessed, with a sentence', (field, key) => {
    expect(worked(swingArm).check(key).status).not.toBe('not assessed');
    const check = worked(changed(swingArm, { [field]: null })).check(key);
    expect(check.status).toBe('not assessed');
    expect(check.factor).toBeNull();
    expect(check.missing).toMatch(/^\S.*\.$/);
  });

  it('says at each check of current that the motor’s drag is left out', () => {
    const w = worked(changed(swingArm, { 'motor.noLoadCurrent': null }));
    for (const key of ['motor.current', 'motor.voltage', 'drive.motorCurrent', 'supply.source'])
      expect(w.check(key).caveat).toMatch(/drag is left out/);
  });
});
