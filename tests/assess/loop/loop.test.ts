// What the assessment says of the position loop: what it cannot do without, what it assumes, and what a simulation adds.
import { describe, expect, it } from 'vitest';
import { assess } from '@/lib/assess/assess';
import type { Assessment } from '@/lib/assess/assessment';
import { plantOfDocument } from '@/lib/assess/sections/loop/simulated-plant';
import type { Design } from '@/lib/design/document';
import { lifter } from '@/lib/design/starters/lifter';
import { slew } from '@/lib/design/starters/slew';
import { swingArm } from '@/lib/design/starters/swing-arm';
import { turntable } from '@/lib/design/starters/turntable';
import { type Changes, changed } from '../power/worked';

const figure = (a: Assessment, key: string) => {
  const found = a.figures.find((f) => f.key === key);
  if (found === undefined) throw new Error(`no figure ${key}`);
  return found;
};
const value = (document: Design, key: string, simulate = false) =>
  figure(assess(document, { simulate }), key).value ?? Number.NaN;
const degrees = (rad: number) => (rad * 180) / Math.PI;

describe('a loop that cannot be simulated says what to enter', () => {
  const cases: readonly (readonly [string, Changes, RegExp])[] = [
    ['without the rotor’s inertia', { 'motor.rotorInertia': null }, /enter the rotor’s inertia/],
    ['without a rate', { 'loop.rate': null }, /rate and its latency/],
    ['without a latency', { 'loop.latency': null }, /rate and its latency/],
    ['without a gain', { 'loop.kp': null }, /proportional gain/],
    ['with a gain of nothing', { 'loop.kp': 0 }, /proportional gain/],
    ['without the drive’s lag', { 'drive.lag': null }, /lag of the drive/],
    ['without the supply’s voltage', { 'supply.cells': null }, /voltage is not known/],
    ['without what full command means', { 'drive.fullCurrent': null }, /current at full command/],
    ['with a motor against its sensor', { 'drive.motorDirection': 'reversed' }, /opposite ways/],
    [
      'with a position loop of the drive that nobody knows',
      { 'drive.mode': 'position', 'drive.fullCurrent': null },
      /position loop commands/,
    ],
  ];

  it.each(cases)('%s', (_, changes, sentence) => {
    const a = assess(changed(swingArm, changes));
    for (const key of ['loop.phaseMargin', 'loop.overshoot', 'loop.suggestedGain', 'loop.bare.settling'])
      expect(figure(a, key)).toMatchObject({ value: null, missing: expect.stringMatching(sentence) });
    expect(a.checks.find((c) => c.key === 'loop.teeth')).toMatchObject({ status: 'not assessed' });
    expect(a.curves.some((c) => c.key.startsWith('loop.'))).toBe(false);
  });
});

describe('an assessment without simulation', () => {
  const [whole, less] = [assess(swingArm), assess(swingArm, { simulate: false })];
  const simulated = new Set(
    whole.figures.filter((f) => /^curve:(loop\.(step|torque)|faults)/.test(f.origin ?? '')).map((f) => f.key),
  );

  it('says of every figure that a simulation gives that it was left out', () => {
    expect(simulated.size).toBeGreaterThan(12);
    for (const key of [...simulated].filter((k) => k.startsWith('loop.')))
      expect(figure(less, key)).toMatchObject({
        value: null,
        missing: expect.stringMatching(/without simulation/),
      });
  });

  it('has the margins all the same, to the last bit', () => {
    for (const key of ['loop.phaseMargin', 'loop.gainMargin', 'loop.barePhaseMargin', 'loop.keptGain'])
      expect(figure(less, key)).toEqual(figure(whole, key));
  });
});

describe('a simulated assessment', () => {
  const a = assess(swingArm);

  it('is the same to the byte when it is made again', () => {
    expect(JSON.stringify(assess(swingArm))).toBe(JSON.stringify(a));
  });

  it('reads every simulated number off a curve that names what it is drawn from', () => {
    const read = a.figures.filter((f) => f.section === 'loop' && f.origin?.startsWith('curve:') === true);
    expect(read.length).toBeGreaterThan(20);
    for (const f of read) {
      const curve = a.curves.find((c) => `curve:${c.key}` === f.origin);
      expect(curve?.inputs.length ?? 0, f.key).toBeGreaterThan(20);
    }
  });

  it('draws command, loaded and bare output over the same time', () => {
    const step = a.curves.find((c) => c.key === 'loop.step');
    expect(step?.lines.map((l) => l.label)).toEqual(['Command', 'Loaded', 'Without load']);
    const ends = step?.lines.map((l) => l.points.at(-1)?.x);
    expect(new Set(ends).size).toBe(1);
    // A tenth of 150°, since the usual move of 90° is more.
    expect(degrees(step?.lines[0]?.points.at(-1)?.y ?? 0)).toBeCloseTo(15, 0);
  });

  it('says what it assumed beside the check of the teeth', () => {
    const caveat = (changes: Changes) =>
      assess(changed(swingArm, changes)).checks.find((c) => c.key === 'loop.teeth')?.caveat;
    expect(caveat({})).toBe('Simulated as two masses, without ripple and shock.');
    expect(caveat({ 'sensor.filter': null })).toMatch(/not filtered/);
    expect(caveat({ 'drive.motorDirection': null })).toMatch(/taken to turn the output the positive way/);
    expect(caveat({ 'output.dryFriction': null })).toMatch(/Dry friction at the output is left out/);
  });
});

describe('the load', () => {
  it('over the rotor is what the output feels of each: 0.95 kg·m² over 36 × 1650 g·cm² for the turntable', () => {
    // 24 teeth drive 144: the rotor's 1.65e-4 kg·m² times 6² (independent).
    expect(value(turntable, 'loop.inertiaRatio')).toBeCloseTo(0.95 / (36 * 1.65e-4), 0);
  });

  it('takes phase from a drive that holds the speed of its bare rotor', () => {
    expect(value(turntable, 'loop.phaseMargin')).toBeLessThan(value(turntable, 'loop.barePhaseMargin'));
    const heavier = changed(turntable, { 'duty.loadInertia': 3 });
    expect(value(heavier, 'loop.phaseMargin')).toBeLessThan(value(turntable, 'loop.phaseMargin'));
    expect(value(heavier, 'loop.barePhaseMargin')).toBeCloseTo(value(turntable, 'loop.barePhaseMargin'), 6);
  });

  it('makes a gain of the bare output run over, and lets a lower one arrive', () => {
    expect(value(turntable, 'loop.overshoot', true)).toBeGreaterThan(0.2);
    expect(value(turntable, 'loop.bare.overshoot', true)).toBeLessThan(0.05);
    const good = value(turntable, 'loop.suggestedGain', true);
    const share = good / (turntable.loop.kp ?? Number.NaN);
    const set = changed(turntable, {
      'loop.kp': good,
      'loop.ki': (turntable.loop.ki ?? 0) * share,
      'loop.kd': (turntable.loop.kd ?? 0) * share,
    });
    expect(value(set, 'loop.overshoot', true)).toBeLessThan(0.12);
    expect(degrees(value(set, 'loop.phaseMargin'))).toBeGreaterThan(43);
  });
});

describe('delay', () => {
  it('takes crossover times delay from the phase, and nothing from where the gain is 1', () => {
    const later = changed(slew, { 'loop.latency': (slew.loop.latency ?? 0) + 10 });
    const omega = 2 * Math.PI * value(slew, 'loop.crossover');
    expect(value(later, 'loop.crossover')).toBeCloseTo(value(slew, 'loop.crossover'), 9);
    expect(value(slew, 'loop.phaseMargin') - value(later, 'loop.phaseMargin')).toBeCloseTo(omega * 0.01, 6);
  });
});

describe('the plant', () => {
  it('of a position drive is one that commands what its own loop commands', () => {
    const plant = plantOfDocument(lifter);
    if (typeof plant === 'string') throw new Error(plant);
    expect(plant.controller.drive).toMatchObject({ kind: 'current', full: 10 });
  });

  it('counts a current as the drive does: 40 A of peak phase current are 34.6 A', () => {
    const plant = plantOfDocument(swingArm);
    if (typeof plant === 'string') throw new Error(plant);
    expect(plant.controller.drive.full).toBeCloseTo((40 * Math.sqrt(3)) / 2, 9);
    expect(plant.plant.supply.motorCurrentLimit).toBeCloseTo((40 * Math.sqrt(3)) / 2, 9);
  });

  it('holds against the whole holding torque: the weight where it is greatest, the rest from outside', () => {
    const plant = plantOfDocument(swingArm);
    if (typeof plant === 'string') throw new Error(plant);
    const { gravityTorque, externalTorque } = plant.plant.load;
    expect(gravityTorque - externalTorque).toBeCloseTo(18.5, 9);
    expect(externalTorque).toBeLessThan(0);
  });

  it('leaves friction that is not known out, since it damps', () => {
    const dry: Changes = {
      'train.stages.s4.wheel.material': 'tpu95a_fdm',
      'train.stages.s4.lubrication': 'dry',
    };
    const plant = plantOfDocument(changed(lifter, dry));
    if (typeof plant === 'string') throw new Error(plant);
    expect(plant.plant.train.efficiency).toBe(1);
    expect(plant.assumed.join(' ')).toMatch(/Friction of the train is not known/);
  });
});
