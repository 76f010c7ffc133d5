/** Belt stages against the vectors of their strands, a one-to-one belt, and what is said when something is not entered. */
import { describe, expect, it } from 'vitest';
import { mixedTrain } from '../fixtures/mixed-train';
import type { Changes } from '../power/worked';
import { forcesOf, number, withStages, workTrain } from './worked-train';

const k3 = 'train.stages.k3';
const belt = mixedTrain.train.stages[2];
if (belt === undefined || belt.kind !== 'belt') throw new Error('The fixture has lost its belt.');
const alone = withStages(mixedTrain, [belt]);
const work = (changes: Changes = {}) =>
  workTrain(alone, { 'duty.peakTorque': 1.4, 'duty.holdTorque': 0.5, ...changes });

describe('a belt stage', () => {
  // By hand: 2 · 1.4 N m over 40 · 5 mm/π.
  it('pulls with twice its torque over the pitch diameter of the driven pulley', () => {
    expect(number(work().figure(`${k3}.effectiveTension`))).toBeCloseTo((2 * 1.4 * Math.PI) / 0.2, 9);
  });

  // Independent derivation: both strands as vectors along the tangents of the pitch circles.
  it('draws its shafts together with the sum of its strands as vectors', () => {
    const worked = work();
    const { figure } = worked;
    const [d_1, d_2, a] = [(20 * 5e-3) / Math.PI, (40 * 5e-3) / Math.PI, 98.7e-3];
    const gamma = Math.asin((d_2 - d_1) / (2 * a));
    const F_u = number(figure(`${k3}.effectiveTension`));
    const along = 120 * Math.cos(gamma);
    const across = F_u * Math.sin(gamma);
    const { radial, axial } = forcesOf(worked.stage(0).input.forces);
    expect(-radial.value).toBeCloseTo(Math.hypot(along, across), 9);
    expect(axial.value).toBe(0);
    expect(worked.stage(0).flips).toBe(false);
  });

  it('of equal pulleys is one to one: half a turn of wrap, ten of twenty teeth in mesh, torque less its losses', () => {
    const worked = work({ [`${k3}.driven.teeth`]: 20, [`${k3}.centreDistance`]: 100 });
    const { figure } = worked;
    expect(number(figure(`${k3}.ratio`))).toBe(1);
    expect(number(figure(`${k3}.wrap`))).toBeCloseTo(Math.PI, 12);
    expect(number(figure(`${k3}.teethInMesh`))).toBe(10);
    expect(number(figure(`${k3}.beltTeeth`))).toBeCloseTo(60, 9);
    const { input, output } = worked.stage(0);
    expect(input.speed.value).toBe(output.speed.value);
    expect(input.torquePeak.value).toBeCloseTo(1.4 / (0.95 * 0.99), 12);
  });

  it('carries no more on ten teeth in mesh than on six, and a fifth less for each one missing', () => {
    const at = (teeth: number) =>
      work({
        [`${k3}.driver.teeth`]: teeth,
        [`${k3}.driven.teeth`]: teeth,
        [`${k3}.centreDistance`]: 150,
      }).check(`${k3}.belt.teeth.life`).capacity ?? Number.NaN;
    expect(at(20)).toBe(at(12));
    expect(at(10) / at(12)).toBeCloseTo(0.8, 9);
    expect(at(8) / at(12)).toBeCloseTo(0.6, 9);
    // Published table of polyurethane belts: at 5 turns a minute between the 24.7 and 22.28 N of a tooth of T5.
    expect(at(12)).toBeCloseTo(6 * 22.28, 9);
  });

  it('limits the output torque by its teeth and by its tension, in proportion', () => {
    for (const key of [`${k3}.belt.teeth.life`, `${k3}.belt.tension`]) {
      const { holdsTo, factor, onLadder } = work().check(key);
      expect(onLadder).toBe(true);
      expect(holdsTo).toBeCloseTo(1.4 * (factor ?? 0), 9);
    }
  });

  it('leaves its cords the less room the tighter it is set, down to none', () => {
    const room = (tension: number) => work({ [`${k3}.tension`]: tension }).check(`${k3}.belt.cords.life`);
    expect(room(60).capacity).toBeGreaterThan(room(120).capacity ?? 0);
    expect(room(400).capacity).toBe(0);
    expect(room(400).status).toBe('below');
  });

  it('is twice as stiff with both strands taut as with one', () => {
    const k = (tension: number) => {
      const { meshStiffness } = work({ [`${k3}.tension`]: tension }).stage(0);
      return typeof meshStiffness === 'string' ? Number.NaN : meshStiffness.value;
    };
    expect(k(60) / k(10)).toBeCloseTo(2, 9);
  });
});

describe('what a belt cannot be assessed for', () => {
  it.each([
    [`${k3}.tension`, `${k3}.belt.cords.life`, /Enter the tension/],
    [`${k3}.tension`, `${k3}.belt.tension`, /Enter the tension/],
    [`${k3}.centreDistance`, `${k3}.belt.teeth.life`, /Enter the centre distance/],
    [`${k3}.centreDistance`, `${k3}.driver.teeth.peak`, /Enter the centre distance/],
  ])('without %s: %s', (path, key, words) => {
    const { check } = work({ [path]: null });
    expect(check(key).status).toBe('not assessed');
    expect(check(key).missing).toMatch(words);
  });

  it('tells no shaft load without its tension, and no stiffness without the belt’s own', () => {
    expect(work({ [`${k3}.tension`]: null }).stage(0).input.forces).toMatch(/Enter the tension/);
    expect(work({ [`${k3}.rigidity`]: null }).stage(0).meshStiffness).toMatch(/Enter the tensile stiffness/);
  });

  it('with pulleys that overlap is not assessed', () => {
    const { check } = work({ [`${k3}.centreDistance`]: 40 });
    expect(check(`${k3}.belt.teeth.life`).missing).toMatch(/overlap/);
  });

  it('with one tooth in mesh is not assessed', () => {
    const { check } = work({
      [`${k3}.driver.teeth`]: 8,
      [`${k3}.driven.teeth`]: 120,
      [`${k3}.centreDistance`]: 103,
    });
    expect(check(`${k3}.belt.teeth.life`).missing).toMatch(/one tooth/);
  });
});
