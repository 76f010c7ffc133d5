/** Beams worked from station to station against finite elements, and the greatest values against a fine search. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Beam,
  deflectionAt,
  greatestDeflection,
  greatestSlope,
  slopeAt,
} from '@/lib/calc/shafts/beam/beam';
import { areaMoment } from '@/lib/calc/shafts/stiffness';
import { solveByElements } from './beam-elements';
import { workByStations } from './stations';

const E = 207e9;
const I = areaMoment.of({ d: 8e-3, d_i: 0 });
// Loads may stand at a support, at one place with another, and beyond both supports.
const place = fc.integer({ min: 0, max: 20 }).map((cm) => cm / 100);
const load = fc.record({
  a: place,
  F: fc.integer({ min: -500, max: 500 }),
  M_0: fc.integer({ min: -200, max: 200 }).map((tenths) => tenths / 10),
});
const beams = fc
  .record({ ends: fc.tuple(place, place), loads: fc.array(load, { minLength: 1, maxLength: 4 }) })
  .filter(({ ends: [a, b] }) => a !== b)
  .map(({ ends: [a, b], loads }): Beam => ({ x_A: Math.min(a, b), x_B: Math.max(a, b), E, I, loads }));
const most = (list: readonly number[]) => Math.max(...list.map(Math.abs), 1e-12);

describe('a beam worked from station to station', () => {
  it('agrees with finite elements in reactions, moments, deflection and slope (seed 1744)', () => {
    fc.assert(
      fc.property(beams, (beam) => {
        const found = solveByElements(beam, []);
        const own = workByStations(beam);
        const force = most([found.R_A, found.R_B, ...beam.loads.map((l) => l.F)]);
        const moment = most([...beam.loads.map((l) => l.M_0), force * 0.2]);
        const bend = most(found.nodes.map((n) => n.y));
        const lean = most(found.nodes.map((n) => n.theta));
        const close = (a: number, b: number, scale: number) =>
          expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-7 * scale);
        close(own.R_A, found.R_A, force);
        close(own.R_B, found.R_B, force);
        for (const node of found.nodes) {
          const here = own.stations.filter((s) => s.x === node.x);
          expect(here.length).toBeGreaterThan(0);
          for (const s of here) {
            close(s.y, node.y, Math.max(bend, 1e-9));
            close(s.theta, node.theta, Math.max(lean, 1e-9));
          }
          if (node.left !== undefined) close(here[0]?.left ?? Number.NaN, node.left, moment);
          if (node.right !== undefined) close(here.at(-1)?.right ?? Number.NaN, node.right, moment);
        }
      }),
      { seed: 1744 },
    );
  });

  it('has no moment left beyond its last station', () => {
    const loads = [
      { a: -0.02, F: 120, M_0: 3 },
      { a: 0.07, F: -310, M_0: 0 },
    ];
    expect(workByStations({ x_A: 0, x_B: 0.05, E, I, loads }).stations.at(-1)?.right).toBeCloseTo(0, 9);
  });
});

describe('the greatest deflection and slope', () => {
  it('are not exceeded anywhere between the ends, and stand where they are said to (seed 1750)', () => {
    fc.assert(
      fc.property(beams, (beam) => {
        const [from, to] = [0, 0.2];
        const y = greatestDeflection(beam, from, to);
        const theta = greatestSlope(beam, from, to);
        const places = Array.from({ length: 41 }, (_, i) => from + ((to - from) * i) / 40);
        expect(Math.abs(y.y)).toBeGreaterThanOrEqual(
          most(places.map((x) => deflectionAt(beam, x))) * (1 - 1e-9) - 1e-12,
        );
        expect(Math.abs(theta.theta)).toBeGreaterThanOrEqual(
          most(places.map((x) => slopeAt(beam, x))) * (1 - 1e-9) - 1e-12,
        );
        expect(y.y).toBe(deflectionAt(beam, y.x));
        expect(theta.theta).toBe(slopeAt(beam, theta.x));
      }),
      { seed: 1750, numRuns: 40 },
    );
  });

  // Roark’s Formulas, and Shigley Table A-9, intermediate load, from memory: with b < a the greatest deflection is
  // F b (l² − b²)^(3/2)/(9√3 E I l), at √((l² − b²)/3).
  it('is where the handbook case of a force off the middle says', () => {
    const [F, l, b] = [250, 0.09, 0.03];
    const found = greatestDeflection({ x_A: 0, x_B: l, E, I, loads: [{ a: l - b, F: -F, M_0: 0 }] }, 0, l);
    expect(found.x).toBeCloseTo(Math.sqrt((l ** 2 - b ** 2) / 3), 8);
    expect(found.y).toBeCloseTo(-(F * b * (l ** 2 - b ** 2) ** 1.5) / (9 * Math.sqrt(3) * E * I * l), 12);
  });
});
