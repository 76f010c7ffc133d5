/** Worm stages against the balance of power and force on the thread, and the cautions of self-locking. */
import { describe, expect, it } from 'vitest';
import { assess } from '@/lib/assess/assess';
import { mixedTrain } from '../fixtures/mixed-train';
import { type Changes, changed } from '../power/worked';
import { forcesOf, number, withStages, workTrain } from './worked-train';

const k4 = 'train.stages.k4';
const worm = mixedTrain.train.stages[3];
if (worm === undefined || worm.kind !== 'worm') throw new Error('The fixture has lost its worm.');
const alone = withStages(mixedTrain, [worm]);
const work = (changes: Changes = {}) => workTrain(alone, changes);
const lead = (starts: number) => Math.atan((starts * 1.5) / 20);

describe.each([1, 2, 4])('a worm of %i starts', (starts) => {
  const worked = work({ [`${k4}.starts`]: starts });
  const { figure } = worked;
  const { input, output, crossed, ratio } = worked.stage(0);

  it('has the teeth of the wheel over its starts for a ratio, on axes that cross', () => {
    expect(ratio.value).toBe(40 / starts);
    expect(crossed).toBe(true);
    expect(number(figure(`${k4}.leadAngle`))).toBeCloseTo(lead(starts), 12);
    expect(number(figure(`${k4}.centreDistance`))).toBeCloseTo(0.04, 12);
  });

  it('pushes the wheel round with what pushes itself along, and the other way about', () => {
    const own = forcesOf(input.forces);
    const wheel = forcesOf(output.forces);
    expect(own.axial.value).toBe(wheel.tangential.value);
    expect(own.tangential.value).toBe(wheel.axial.value);
    expect(own.radial.value).toBe(wheel.radial.value);
    expect(wheel.tangential.value).toBeCloseTo((2 * 12) / 0.06, 9);
    // Independent derivation: friction along the thread, at the angle whose tangent is μ / cos α_n.
    const mu = number(figure(`${k4}.friction`));
    const rho = Math.atan(mu / Math.cos((20 * Math.PI) / 180));
    expect(own.tangential.value / own.axial.value).toBeCloseTo(Math.tan(lead(starts) + rho), 9);
  });

  it('turns the torque of its tangential force into that of the wheel, less its friction and its bearings', () => {
    const own = forcesOf(input.forces);
    const thread = (own.tangential.value * 0.02) / 2;
    expect(input.torquePeak.value).toBeCloseTo(thread / 0.99, 9);
    expect(number(figure(`${k4}.efficiency`))).toBeCloseTo(
      (output.torquePeak.value * output.speed.value) / (input.torquePeak.value * input.speed.value),
      9,
    );
  });
});

describe('a worm that locks', () => {
  const locking = work({ [`${k4}.starts`]: 1, [`${k4}.friction`]: 0.1 });

  it('passes on less than half, and the wheel gives nothing back', () => {
    expect(number(locking.figure(`${k4}.efficiency`))).toBeLessThan(0.5);
    expect(number(locking.figure(`${k4}.backEfficiency`))).toBeLessThan(0);
  });

  it('is said to be no brake for a person, whatever else holds', () => {
    const found = assess(changed(alone, { [`${k4}.starts`]: 1, [`${k4}.friction`]: 0.1 })).findings;
    const caution = found.find(({ rule }) => rule === 'worm-self-locking');
    expect(caution?.text).toMatch(/holds what hangs on its wheel by friction alone/);
    expect(caution?.text).toMatch(/Vibration.*never be the only thing that keeps a person/);
    expect(caution?.advice).toMatch(/brake or a lock.*apply on site/);
    expect(found.find(({ rule }) => rule === 'worm-heat')?.at).toBe(`${k4}.efficiency`);
  });
});

describe('what a worm cannot be assessed for', () => {
  it('without friction has no efficiency or forces, and the motor is held to drive it all the same', () => {
    const dry = {
      [`${k4}.lubrication`]: 'dry',
      [`${k4}.wormMaterial`]: 'pa6_fdm_dry',
      [`${k4}.wormWheel.material`]: 'tpu95a_fdm',
    };
    const unknown = work(dry);
    const known = work({ ...dry, [`${k4}.friction`]: 0.05 });
    expect(unknown.figure(`${k4}.efficiency`)).toMatch(/enter what was measured/);
    expect(unknown.stage(0).input.forces).toMatch(/enter what was measured/);
    expect(unknown.train.efficiency).toBeNull();
    expect(unknown.train.motorTorquePeak.value).toBeGreaterThan(known.train.motorTorquePeak.value);
    expect(known.figure(`${k4}.efficiency`)).toBeGreaterThan(0.5);
  });

  it('too thin for its module has no body', () => {
    expect(work({ [`${k4}.wormDiameter`]: 3.5 }).check(`${k4}.wormWheel.root.peak`).missing).toMatch(
      /no body/,
    );
  });

  it('at an angle that no table knows has no root stress', () => {
    const { missing } = work({ [`${k4}.pressureAngle`]: 14.2 }).check(`${k4}.wormWheel.root.peak`);
    expect(missing).toMatch(/below 14.5°/);
  });

  it('of steel has no flank value, as steel on steel seizes before it pits', () => {
    const { missing } = work({ [`${k4}.wormWheel.material`]: 'steel_c45' }).check(
      `${k4}.wormWheel.flank.life`,
    );
    expect(missing).toMatch(/seizes/);
  });
});

describe('a plastic worm wheel', () => {
  it('grows warmer the less the worm passes on, and its root is judged at that temperature', () => {
    const grease = { [`${k4}.lubrication`]: 'grease', 'duty.peakTorque': 0.4, 'duty.holdTorque': 0.1 };
    const warm = (friction: number) =>
      number(work({ ...grease, [`${k4}.friction`]: friction }).figure(`${k4}.wormWheel.flankTemperature`));
    expect(warm(0.1)).toBeGreaterThan(warm(0.03));
    const { factor } = work({ ...grease, [`${k4}.friction`]: 0.03 }).check(`${k4}.wormWheel.root.peak`);
    expect(factor).toBeGreaterThan(0);
  });

  it('wears in proportion to its life, and the more the fewer starts slide the longer past each tooth', () => {
    const wear = (changes: Changes) =>
      work({ [`${k4}.lubrication`]: 'grease', ...changes }).check(`${k4}.wormWheel.wear`).demand ??
      Number.NaN;
    expect(wear({ 'duty.lifeCycles': 40000 }) / wear({ 'duty.lifeCycles': 20000 })).toBeCloseTo(2, 9);
    expect(wear({ [`${k4}.starts`]: 1 })).toBeGreaterThan(3.5 * wear({}));
    expect(work().work.checks.some(({ key }) => key.endsWith('wormWheel.wear'))).toBe(false);
  });

  // Buckingham's equation by hand: 400 N · 1.25 over a pitch of π 1.5 mm cos γ, 12 mm, y 0.125.
  it('bears in its root what Buckingham’s equation says', () => {
    const { demand } = work().check(`${k4}.wormWheel.root.peak`);
    const p_n = Math.PI * 1.5e-3 * Math.cos(lead(4));
    expect(demand).toBeCloseTo((400 * 1.25) / (p_n * 12e-3 * 0.125), 0);
  });
});
