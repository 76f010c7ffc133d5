/** Laws of the simulated plant: without a command nothing gains energy, stops hold, the same run gives the same bytes. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Mechanics } from '@/lib/calc/loop/simulation/mechanics';
import { simulate } from '@/lib/calc/loop/simulation/simulate';
import type { Plant, Run } from '@/lib/calc/loop/simulation/types';
import { actuator, positioner } from './systems';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const decades = (min: number, max: number) => number(min, max).map((x) => 10 ** x);

const plants: fc.Arbitrary<Plant> = fc
  .record({
    ratio: decades(0, 2.7),
    rotor: decades(-7, -3),
    inertia: decades(-3, 1),
    stiffness: decades(1, 6),
    damping: fc.oneof(fc.constant(0), decades(-2, 1.5)),
    backlash: fc.oneof(fc.constant(0), decades(-5, -1)),
    efficiency: number(0.3, 1),
    drag: fc.oneof(fc.constant(0), decades(-4, -1)),
    dry: fc.oneof(fc.constant(0), decades(-2, 1.5)),
    breakaway: number(1, 3),
    viscous: fc.oneof(fc.constant(0), decades(-2, 1)),
    stop: decades(2, 6),
  })
  .map((p) => ({
    ...actuator,
    ratio: p.ratio,
    motor: { ...actuator.motor, inertia: p.rotor, dragTorque: p.drag },
    train: { stiffness: p.stiffness, damping: p.damping, backlash: p.backlash, efficiency: p.efficiency },
    load: {
      ...actuator.load,
      inertia: p.inertia,
      gravityTorque: 0,
      dryFriction: p.dry,
      breakaway: p.breakaway,
      viscousFriction: p.viscous,
      lowStop: -0.3,
      highStop: 0.3,
      stopStiffness: p.stop,
    },
  }));

const starts = fc.record({ angle: number(-0.29, 0.29), speed: number(-20, 20) });

describe('a plant without command', () => {
  it('never gains energy, whatever it runs into', () => {
    fc.assert(
      fc.property(plants, starts, (plant, start) => {
        const mechanics = new Mechanics(plant, start);
        const first = mechanics.energy();
        let before = first;
        let gained = 0;
        for (let n = 0; n < 2000; n += 1) {
          mechanics.advance(5e-5, 0, 0);
          const after = mechanics.energy();
          gained = Math.max(gained, after - before);
          before = after;
        }
        expect(gained).toBeLessThanOrEqual(1e-7 * first + 1e-12);
      }),
      { numRuns: 400, endOnFailure: true },
    );
  });

  it('goes into its stops no further than its energy winds them', () => {
    fc.assert(
      fc.property(plants, starts, (plant, start) => {
        const mechanics = new Mechanics(plant, start);
        const into = Math.sqrt((2 * mechanics.energy()) / plant.load.stopStiffness);
        let furthest = 0;
        for (let n = 0; n < 2000; n += 1) {
          mechanics.advance(5e-5, 0, 0);
          furthest = Math.max(furthest, Math.abs(mechanics.output));
        }
        expect(furthest).toBeLessThanOrEqual(0.3 + into * (1 + 1e-6));
      }),
      { numRuns: 150, endOnFailure: true },
    );
  });

  it('under its weight swings without gaining more than the steps round', () => {
    fc.assert(
      fc.property(plants, starts, number(0.1, 20), (plant, start, gravityTorque) => {
        const heavy = { ...plant, load: { ...plant.load, gravityTorque } };
        const mechanics = new Mechanics(heavy, start);
        const first = mechanics.energy();
        const size = Math.abs(first) + gravityTorque;
        let most = first;
        for (let n = 0; n < 2000; n += 1) {
          mechanics.advance(5e-5, 0, 0);
          most = Math.max(most, mechanics.energy());
        }
        expect(most).toBeLessThanOrEqual(first + 1e-5 * size + 1e-12);
      }),
      { numRuns: 150, endOnFailure: true },
    );
  });

  it('stays at rest where nothing pulls', () => {
    const still = { ...actuator, load: { ...actuator.load, gravityTorque: 0 } };
    const mechanics = new Mechanics(still, { angle: 0.1 });
    for (let n = 0; n < 1000; n += 1) mechanics.advance(5e-5, 0, 0);
    expect([mechanics.output, mechanics.rotor, mechanics.outputSpeed]).toEqual([0.1, 0.1, 0]);
  });
});

describe('a run', () => {
  const run: Run = {
    duration: 0.5,
    target: { kind: 'step', at: 0.05, from: 0, to: 0.8 },
    start: { angle: 0 },
    seed: 7,
    samples: 501,
  };
  const bytes = (other: Partial<Run> = {}) => {
    const result = simulate(actuator, positioner, { ...run, ...other });
    return [result.output, result.sensed, result.rotor, result.current, result.toothTorque]
      .map((values) => Buffer.from(values.buffer).toString('hex'))
      .join();
  };

  it('gives the same bytes again, and other noise for another seed', () => {
    const first = bytes();
    expect(bytes({ seed: 8 })).not.toBe(first);
    expect(bytes()).toBe(first);
  });

  it('keeps whatever number of points is asked without changing what it does', () => {
    const few = simulate(actuator, positioner, { ...run, samples: 11 });
    const many = simulate(actuator, positioner, { ...run, samples: 1001 });
    expect(few.peaks).toEqual(many.peaks);
    expect(few.output.at(-1)).toBe(many.output.at(-1));
    expect(few.time.length).toBe(11);
  });
});
