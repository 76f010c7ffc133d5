/** The beam solver against finite elements solved by a general linear-algebra library, and against handbook cases. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Beam,
  beamOf,
  deflectionAt,
  greatestMoment,
  momentAt,
  reactions,
  shearAt,
  slopeAt,
} from '@/lib/calc/shafts/beam/beam';
import { centreDeflection, centreSlope } from '@/lib/calc/shafts/beam/cases';
import { areaMoment } from '@/lib/calc/shafts/stiffness';
import { solveByElements } from './beam-elements';

const E = 207e9;
const I = areaMoment.of({ d: 8e-3, d_i: 0 });
const place = fc.integer({ min: 0, max: 200 }).map((mm) => mm / 1000);
const load = fc.record({
  a: place,
  F: fc.integer({ min: -500, max: 500 }),
  M_0: fc.integer({ min: -200, max: 200 }).map((tenths) => tenths / 10),
});
const beams = fc
  .record({ ends: fc.tuple(place, place), loads: fc.array(load, { minLength: 1, maxLength: 5 }) })
  .filter(({ ends: [a, b] }) => a !== b)
  .map(({ ends: [a, b], loads }): Beam => ({ x_A: Math.min(a, b), x_B: Math.max(a, b), E, I, loads }));

describe('beams on two supports', () => {
  it('agree with finite elements in reactions, moments, deflection and slope, loads inside and overhanging (seed 4711)', () => {
    fc.assert(
      fc.property(beams, fc.array(place, { maxLength: 3 }), (beam, more) => {
        const found = solveByElements(beam, more);
        const close = (own: number, other: number, scale: number) =>
          expect(Math.abs(own - other)).toBeLessThanOrEqual(1e-7 * scale);
        const most = (list: readonly number[]) => Math.max(...list.map(Math.abs), 1e-12);
        const { R_A, R_B } = reactions(beam);
        const force = most([R_A, R_B, ...beam.loads.map((l) => l.F)]);
        close(R_A, found.R_A, force);
        close(R_B, found.R_B, force);
        const bend = most(found.nodes.map((n) => n.y));
        const lean = most(found.nodes.map((n) => n.theta));
        const moment = most([
          ...found.nodes.flatMap((n) => [n.left ?? 0, n.right ?? 0]),
          ...beam.loads.map((l) => l.M_0),
          force * 0.2,
        ]);
        for (const node of found.nodes) {
          close(deflectionAt(beam, node.x), node.y, bend);
          close(slopeAt(beam, node.x), node.theta, lean);
          if (node.right !== undefined) close(momentAt(beam, node.x), node.right, moment);
          if (node.left !== undefined) close(momentAt(beam, node.x, 'left'), node.left, moment);
        }
        const greatest = Math.max(
          ...found.nodes.flatMap((n) => [Math.abs(n.left ?? 0), Math.abs(n.right ?? 0)]),
        );
        close(Math.abs(greatestMoment(beam).M), greatest, moment);
      }),
      { seed: 4711, numRuns: 150 },
    );
  });

  it('balance: nothing is left of shear and moment beyond the last load (seed 31)', () => {
    fc.assert(
      fc.property(beams, (beam) => {
        expect(Math.abs(shearAt(beam, 1))).toBeLessThan(1e-9 * 1e5);
        expect(Math.abs(momentAt(beam, 1))).toBeLessThan(1e-9 * 1e5);
        expect(shearAt(beam, -1)).toBe(0);
        expect(deflectionAt(beam, beam.x_A)).toBe(0);
        expect(Math.abs(deflectionAt(beam, beam.x_B))).toBeLessThan(1e-12);
      }),
      { seed: 31 },
    );
  });

  it('has the shear that its moment rises with (seed 32)', () => {
    fc.assert(
      fc.property(beams, fc.double({ min: 0.0001, max: 0.1999, noNaN: true }), (beam, x) => {
        const step = 1e-6;
        const places = [beam.x_A, beam.x_B, ...beam.loads.map((l) => l.a)];
        fc.pre(places.every((p) => Math.abs(p - x) > 2 * step));
        const rise = (momentAt(beam, x + step) - momentAt(beam, x - step)) / (2 * step);
        expect(Math.abs(rise - shearAt(beam, x))).toBeLessThan(1e-4 * 1e3);
      }),
      { seed: 32 },
    );
  });
});

describe('handbook cases', () => {
  it('sags under a centre force as the handbook case says', () => {
    const beam: Beam = { x_A: 0, x_B: 0.08, E, I, loads: [{ a: 0.04, F: -300, M_0: 0 }] };
    expect(-deflectionAt(beam, 0.04)).toBeCloseTo(centreDeflection.of({ F: 300, l: 0.08, E, I }), 12);
    expect(slopeAt(beam, 0.08)).toBeCloseTo(centreSlope.of({ F: 300, l: 0.08, E, I }), 12);
    expect(greatestMoment(beam)).toEqual({ x: 0.04, M: expect.closeTo(6, 9) });
  });

  // Shigley’s Mechanical Engineering Design, Table A-9, simple supports with overhanging load, from memory.
  it('hangs over as the handbook case says: F a²(l + a)/(3 E I) at the end', () => {
    const [F, l, a] = [120, 0.05, 0.02];
    const beam: Beam = { x_A: 0, x_B: l, E, I, loads: [{ a: l + a, F: -F, M_0: 0 }] };
    const { R_A, R_B } = reactions(beam);
    expect(R_A).toBeCloseTo((-F * a) / l, 9);
    expect(R_B).toBeCloseTo((F * (l + a)) / l, 9);
    expect(deflectionAt(beam, l + a)).toBeCloseTo((-F * a ** 2 * (l + a)) / (3 * E * I), 12);
    expect(momentAt(beam, l)).toBeCloseTo(-F * a, 9);
  });

  // The same table, intermediate load, from memory: y = F b x (x² + b² − l²)/(6 E I l) left of the load.
  it('sags under a force anywhere as the handbook case says', () => {
    const [F, l, a] = [250, 0.09, 0.03];
    const b = l - a;
    const beam: Beam = { x_A: 0.01, x_B: 0.01 + l, E, I, loads: [{ a: 0.01 + a, F: -F, M_0: 0 }] };
    for (const x of [0.005, 0.02, 0.03])
      expect(deflectionAt(beam, 0.01 + x)).toBeCloseTo(
        (F * b * x * (x ** 2 + b ** 2 - l ** 2)) / (6 * E * I * l),
        12,
      );
  });

  it('is refused with both supports at one place, crossed supports, no stiffness or a load without number', () => {
    const beam: Beam = { x_A: 0, x_B: 0.05, E, I, loads: [{ a: 0.01, F: 1, M_0: 0 }] };
    expect(beamOf(beam)).toBe(beam);
    expect(beamOf({ ...beam, x_B: 0 })).toBeUndefined();
    expect(beamOf({ ...beam, x_A: 0.06 })).toBeUndefined();
    expect(beamOf({ ...beam, I: 0 })).toBeUndefined();
    expect(beamOf({ ...beam, loads: [{ a: Number.NaN, F: 1, M_0: 0 }] })).toBeUndefined();
  });
});
