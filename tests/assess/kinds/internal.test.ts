/** A pinion in a ring against the same pinion beside a wheel, Hertz, and the geometry of the handbook. */
import { describe, expect, it } from 'vitest';
import type { Design } from '@/lib/design/document';
import { mixedTrain } from '../fixtures/mixed-train';
import { forcesOf, number, withStages, workTrain } from './worked-train';

const k2 = 'train.stages.k2';
const ring = mixedTrain.train.stages[1];
if (ring === undefined || ring.kind !== 'internal') throw new Error('The fixture has lost its ring.');

/** The internal stage alone, and the same two gears as an external pair. */
const inside: Design = withStages(mixedTrain, [ring]);
const beside: Design = withStages(mixedTrain, [
  { ...ring, kind: 'spur', centreDistance: null, wheel: { ...ring.wheel, shift: 0 } },
]);

describe('a pinion in a ring', () => {
  const worked = workTrain(inside);
  const { figure, check } = worked;
  const stage = worked.stage(0);

  // KHK Gear Technical Reference, internal gears with equal shifts (from memory): a = m (z_2 − z_1)/2, working at 20°.
  it('of 20 in 60 teeth with equal shifts stands at 25 mm, the ring’s tip at 73.25 mm', () => {
    expect(number(figure(`${k2}.backlashFreeDistance`))).toBeCloseTo(0.025, 9);
    expect(number(figure(`${k2}.wheel.tipDiameter`))).toBeCloseTo(60 * 1.25e-3 - 2 * 1.25e-3 * 0.7, 9);
    expect(number(figure(`${k2}.ratio`))).toBe(3);
  });

  it('turns the same way as its ring, is pushed to the ring’s axis, and the contact lies beyond its own', () => {
    expect(stage.flips).toBe(false);
    const pinion = forcesOf(stage.input.forces);
    const outer = forcesOf(stage.output.forces);
    expect(pinion.side).toBe(-1);
    expect(outer.side).toBe(1);
    for (const { radial, tangential } of [pinion, outer]) {
      expect(radial.value).toBeLessThan(0);
      expect(radial.value / tangential.value).toBeCloseTo(-Math.tan((20 * Math.PI) / 180), 9);
    }
  });

  it('gains play as the axes come closer, and binds as they part', () => {
    const at = (a: number) => workTrain(inside, { [`${k2}.centreDistance`]: a });
    expect(number(at(24.9).figure(`${k2}.backlash`))).toBeGreaterThan(
      number(at(24.95).figure(`${k2}.backlash`)),
    );
    expect(number(at(25.02).figure(`${k2}.backlash`))).toBeLessThan(0);
    expect(at(25.2).check(`${k2}.pinion.root.peak`).missing).toMatch(/too large for the ring/);
  });

  it('is pressed less on its flanks and slides less than beside a wheel of as many teeth', () => {
    const external = workTrain(beside);
    const pressure = (w: typeof worked) => w.check(`${k2}.pinion.flank.life`).demand ?? Number.NaN;
    // Curvatures that differ where others add: (u − 1)/(u + 1) under a root, a little more by the contact ratio.
    expect(pressure(worked) / pressure(external)).toBeGreaterThan(0.85 * Math.sqrt(2 / 4));
    expect(pressure(worked) / pressure(external)).toBeLessThan(1.1 * Math.sqrt(2 / 4));
    const loss = (w: typeof worked) => 1 - number(w.figure(`${k2}.efficiency`)) / 0.99;
    expect(loss(worked)).toBeLessThan(0.7 * loss(external));
  });

  it('has its ring’s root judged as the rack that stands for it', () => {
    const step = (name: string) =>
      worked.work.sheet.steps.find((s) => s.key === `${k2}.wheel.${name}`)?.value;
    // DIN 3990-3:1987 (from memory): 2.05 for the standard rack with a sharp fillet.
    expect(step('Y_Fa')).toBeCloseTo(2.05, 2);
    expect(check(`${k2}.wheel.root.peak`).factor).toBeGreaterThan(0);
  });

  it('cannot be assessed in a ring of no more teeth than its own', () => {
    const { check: of } = workTrain(inside, { [`${k2}.wheel.teeth`]: 20 });
    expect(of(`${k2}.pinion.root.peak`).missing).toMatch(/more teeth/);
    expect(of(`${k2}.wheel.flank.life`).status).toBe('not assessed');
  });

  it('does not read a margin as clear where it is not a number: its tips lie inside the base circle', () => {
    const unshifted = workTrain(inside, {
      [`${k2}.pinion.teeth`]: 14,
      [`${k2}.pinion.shift`]: 0,
      [`${k2}.wheel.teeth`]: 30,
      [`${k2}.wheel.shift`]: 0,
      [`${k2}.centreDistance`]: null,
    });
    expect(unshifted.figure(`${k2}.trochoidMargin`)).toMatch(/do not cross|inside its base circle/);
    expect(unshifted.figure(`${k2}.trimmingMargin`)).toMatch(/cannot|can be told/);
    // The involute’s own limit is told all the same, and fires.
    expect(number(unshifted.figure(`${k2}.tipRoom`))).toBeLessThan(0);
  });
});
