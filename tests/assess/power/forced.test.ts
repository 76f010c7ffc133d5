// What drive and supply can force at stall.
import { describe, expect, it } from 'vitest';
import type { Design } from '@/lib/design/document';
import { isPair } from '@/lib/design/parts/stage';
import { swingArm } from '@/lib/design/starters/swing-arm';
import { type Changes, changed, plainTrain, worked } from './worked';

/** An outrunner of the 3 kW class behind 81:1: four stages of 3:1. */
function outrunner(cells: number, changes: Changes = {}): Design {
  const stage = swingArm.train.stages.find(isPair);
  if (stage === undefined) throw new Error('no stage');
  const three = (id: string) => ({
    ...stage,
    id,
    pinion: { ...stage.pinion, teeth: 20 },
    wheel: { ...stage.wheel, teeth: 60 },
  });
  const design = changed(swingArm, {
    'motor.speedConstant': 150,
    'motor.resistance': 30,
    'motor.maxCurrent': 80,
    'motor.maxPower': 3000,
    'drive.convention': 'dc',
    'drive.motorCurrentLimit': 80,
    'drive.batteryCurrentLimit': 60,
    'drive.maxVoltage': 60,
    'supply.cells': cells,
    ...changes,
  });
  return { ...design, train: { ...design.train, stages: ['a1', 'b2', 'c3', 'd4'].map(three) } };
}

const forced = (design: Design) => worked(design).drive.forced?.value ?? Number.NaN;
/** Torque per ampere of direct current of 150 rpm/V, by hand: 60/(2π·150). */
const perAmpere = 60 / (2 * Math.PI * 150);

describe('a 3 kW outrunner of 150 rpm/V and 30 mΩ behind 81:1, limited to 80 A', () => {
  // A fact of the trade (common practice, no source): such a drive breaks printed trains made for 15 N·m.
  it.each([6, 8, 10, 12])('can force far more than 15 N·m at the output on %i cells', (cells) => {
    expect(plainTrain(outrunner(cells)).ratio.value).toBeCloseTo(81, 9);
    expect(forced(outrunner(cells))).toBeGreaterThan(10 * 15);
  });

  it('forces ratio × torque constant × limit, without friction', () => {
    // independent: 81 × 0.06366 N·m/A × 80 A = 412.5 N·m
    expect(forced(outrunner(6))).toBeCloseTo(81 * perAmpere * 80, 6);
    expect(forced(outrunner(6))).toBeCloseTo(412.5, 1);
  });

  it('counts the limit as its drive does: a limit of peak phase current forces √3/2 of it', () => {
    const q = forced(outrunner(6, { 'drive.convention': 'qPeak' }));
    expect(q / forced(outrunner(6))).toBeCloseTo(Math.sqrt(3) / 2, 12);
  });

  it('is hardly held by a battery limit alone: at rest U·I goes into the winding’s resistance', () => {
    // independent: 6 × 4.2 V × 60 A = 1512 W; √(1512 W / 30 mΩ) = 224.5 A
    const alone = forced(outrunner(6, { 'drive.motorCurrentLimit': null }));
    expect(alone).toBeCloseTo(81 * perAmpere * Math.sqrt((25.2 * 60) / 0.03), 6);
  });

  it('without any limit is bounded by voltage over resistance alone, and says so', () => {
    const free = outrunner(6, { 'drive.motorCurrentLimit': null, 'drive.batteryCurrentLimit': null });
    expect(forced(free)).toBeCloseTo(81 * perAmpere * (25.2 / 0.03), 6);
    const step = worked(free).work.sheet.steps.find((s) => s.key === 'drive.T_st');
    expect(step?.note).toMatch(/upper bound/);
  });

  it('never forces more than voltage over resistance, however high the limit', () => {
    const high = outrunner(6, { 'drive.motorCurrentLimit': 1000, 'drive.batteryCurrentLimit': null });
    expect(forced(high)).toBeCloseTo(81 * perAmpere * (25.2 / 0.03), 6);
  });

  it('is told from the limit alone where the supply is not known, and not at all without either', () => {
    expect(forced(outrunner(6, { 'supply.cells': null }))).toBeCloseTo(81 * perAmpere * 80, 6);
    const dark = worked(outrunner(6, { 'supply.cells': null, 'drive.motorCurrentLimit': null }));
    expect(dark.drive).toMatchObject({ stallTorque: null, forced: null });
    expect(dark.figure('drive.forced').missing).toMatch(/voltage is not known/);
    expect(dark.check('rig.hold')).toMatchObject({ status: 'not assessed', holdsTo: null, onLadder: true });
  });
});

describe('the rig', () => {
  it('is judged against what is forced, not against what the duty asks', () => {
    const { check, drive } = worked(swingArm);
    expect(check('rig.hold')).toMatchObject({ mode: 'slip', capacity: 150, holdsTo: 150, onLadder: true });
    expect(check('rig.hold').demand).toBe(drive.forced?.value);
  });

  it.each(['hand', 'nothing'] as const)(
    'is not assessed when held by %s, whatever torque is entered',
    (held) => {
      const { check } = worked(changed(swingArm, { 'rig.held': held }));
      expect(check('rig.hold')).toMatchObject({ status: 'not assessed', factor: null });
    },
  );
});
