/** Hubs by shape: profiles against pressure integrated round them, torsion against Saint-Venant worked afresh, teeth and screws one by one. */
import fc from 'fast-check';
import { lusolve } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { flangeBearingTorque, flangeShearTorque } from '@/lib/calc/shafts/hubs/flange';
import {
  flatsTorque,
  p3gTorque,
  p4cEccentricity,
  p4cTorque,
  polygonFlat,
  polygonTorsion,
  polygonWallTorque,
} from '@/lib/calc/shafts/hubs/polygon';
import { flatTorque, splineTorque } from '@/lib/calc/shafts/hubs/positive';
import { splineShearTorque, splineToothWidth } from '@/lib/calc/shafts/hubs/spline';
import { p3gShare, p4cShare, torsionSections } from '@/lib/catalog/shafts/polygons';

const range = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Torque a unit length of even pressure p on the rising flanks of r(phi) holds: p times the sum of r dr where r grows. */
function evenPressure(r: (phi: number) => number, p: number): number {
  const n = 20000;
  let torque = 0;
  for (let i = 0; i < n; i++) {
    const [from, to] = [r((2 * Math.PI * i) / n), r((2 * Math.PI * (i + 1)) / n)];
    if (to > from) torque += (p * (to ** 2 - from ** 2)) / 2;
  }
  return torque;
}

describe('polygon profiles', () => {
  it('P3G: its first term is π/4 of what even pressure on three rising flanks holds', () => {
    const [d, e] = [20e-3, 0.63e-3];
    const even = evenPressure((phi) => d / 2 - e * Math.cos(3 * phi), 1);
    const shape = p3gTorque.of({ p: 1, l: 1, e_1: e, d_1: d }) - 0.05 * d ** 2;
    expect(shape / even).toBeCloseTo(Math.PI / 4, 6);
  });

  it('P4C: its first term is π/4 of what even pressure between flats and corners holds', () => {
    const [d_1, d_2] = [30e-3, 25e-3];
    const mean = (d_1 + d_2) / 4;
    const swing = (d_1 - d_2) / 4;
    const even = evenPressure((phi) => mean - swing * Math.cos(4 * phi), 1);
    const e_r = p4cEccentricity.of({ d_1, d_2 });
    const d_r = (d_1 + d_2) / 2;
    const shape = p4cTorque.of({ p: 1, l: 1, e_r, d_2 }) - 0.05 * d_r ** 2;
    expect(e_r).toBeCloseTo(1.25e-3, 12);
    expect(shape / even).toBeCloseTo(Math.PI / 4, 6);
  });

  it('the shares taken for them lie at the shallow end of the sizes remembered from the standards', () => {
    for (const [d, e] of [
      [14, 0.44],
      [16, 0.5],
      [20, 0.63],
      [25, 0.8],
      [30, 1],
      [40, 1.25],
    ] as const)
      expect(e / d).toBeGreaterThanOrEqual(p3gShare.value);
    for (const [d_1, d_2] of [
      [14, 11],
      [20, 17],
      [30, 25],
      [40, 35],
    ] as const)
      expect(d_2 / d_1).toBeLessThanOrEqual(p4cShare.value);
  });

  it('a wall twice as thick stands four times the torque', () => {
    const g = { sigma_h: 20e6, l: 20e-3, s_h: 5e-3, c_p: 1.44 };
    expect(polygonWallTorque.of({ ...g, s_h: 10e-3 }) / polygonWallTorque.of(g)).toBeCloseTo(4, 12);
  });
});

describe('squares and hexagons', () => {
  it('hold on each flat what one flat of that width holds', () => {
    const b_f = polygonFlat.of({ s_w: 8e-3, n_f: 4, s_k: 0 });
    expect(b_f).toBeCloseTo(8e-3, 12);
    const one = flatTorque.of({ p: 20e6, l: 10e-3, b_f });
    expect(flatsTorque.of({ n_f: 4, p: 20e6, l: 10e-3, b_f })).toBeCloseTo(4 * one, 12);
    expect(polygonFlat.of({ s_w: 8e-3, n_f: 4, s_k: 0.1 })).toBeCloseTo(6.4e-3, 12);
    // A hexagon 8 mm across flats has sides of 8/√3 = 4.619 mm.
    expect(polygonFlat.of({ s_w: 8e-3, n_f: 6, s_k: 0 })).toBeCloseTo(8e-3 / Math.sqrt(3), 12);
  });

  it.each([4, 6] as const)('%i flats: torsion section as Prandtl’s stress function gives it', (n) => {
    const s_w = 2;
    const exact = torsionSection(n);
    const tau = polygonTorsion.of({ T: 1, w_n: torsionSections[n], s_w });
    expect(Math.abs(tau * exact * s_w ** 3 - 1)).toBeLessThan(0.01);
  });
});

/**
 * Torsion section over width³ of a regular n-gon of inradius 1: stress function −r²/2 + Σ a_k r^(nk) cos(nk θ), zero
 * at points of one edge; section = twice its volume over its steepest slope, which lies in the middle of an edge.
 */
function torsionSection(n: number): number {
  const terms = 9;
  const points = Array.from({ length: terms }, (_, i) => {
    const theta = (Math.PI / n) * (i / (terms - 1)) * 0.999;
    return { theta, r: 1 / Math.cos(theta) };
  });
  const a = (
    lusolve(
      points.map(({ r, theta }) =>
        Array.from(
          { length: terms },
          (_, k) => (r * Math.cos(Math.PI / n)) ** (n * k) * Math.cos(n * k * theta),
        ),
      ),
      points.map(({ r }) => r ** 2 / 2),
    ) as unknown as number[][]
  ).map(([x]) => x ?? Number.NaN); // mathjs types the solution loosely; given arrays it returns a column as an array
  const scale = Math.cos(Math.PI / n);
  const value = (r: number, theta: number) =>
    a.reduce((sum, a_k, k) => sum + a_k * (r * scale) ** (n * k) * Math.cos(n * k * theta), -(r ** 2) / 2);
  const slope = -a.reduce((sum, a_k, k) => sum + (k === 0 ? 0 : a_k * n * k * scale ** (n * k)), -1);
  let volume = 0;
  const [nr, nt] = [400, 100];
  for (let j = 0; j < nt; j++) {
    const theta = ((j + 0.5) / nt) * (Math.PI / n);
    const edge = 1 / Math.cos(theta);
    for (let i = 0; i < nr; i++) {
      const r = ((i + 0.5) / nr) * edge;
      volume += value(r, theta) * r * (edge / nr) * (Math.PI / n / nt);
    }
  }
  return (2 * 2 * n * volume) / slope / 2 ** 3;
}

describe('splines and flanges', () => {
  it('shear of a spline does not ask how many teeth share the circle: half of it is tooth (seed 5480)', () => {
    fc.assert(
      fc.property(range(5e-3, 40e-3), range(4, 60), range(2e6, 40e6), (d_m, z, tau_m) => {
        const b_t = splineToothWidth.of({ d_m, z });
        const T = splineShearTorque.of({ s_z: 0.5, z, b_t, l: d_m, tau_m, d_m });
        // Half of the circle carries shear, half of the teeth touch: τ × π d/2 × 0.5 × l × d/2.
        expect(T / ((tau_m * Math.PI * d_m ** 3) / 8)).toBeCloseTo(1, 9);
      }),
      { seed: 5480 },
    );
  });

  it('a coarse spline of plastic shears before its flanks give way only when its teeth are taller than they are wide', () => {
    const g = { s_z: 0.5, z: 16, l: 10e-3, d_m: 20e-3 };
    const b_t = splineToothWidth.of(g);
    const flank = (h_b: number) => splineTorque.of({ ...g, p: 20e6, h_b });
    const shear = splineShearTorque.of({ ...g, b_t, tau_m: 12e6 });
    expect(flank(b_t / 2)).toBeLessThan(shear);
    expect(flank(b_t)).toBeGreaterThan(shear);
  });

  it('counts each screw of a flange with its force times the circle, by hand', () => {
    // Four M4 on 18 mm radius, half of them in contact: 2 × 8.78 mm² × 300 MPa × 18 mm = 94.8 N m.
    const T = flangeShearTorque.of({ s_n: 0.5, n: 4, A: 8.78e-6, tau_s: 300e6, r: 18e-3 });
    expect(T).toBeCloseTo(94.824, 3);
    // In 5 mm of plastic at 20 MPa: 2 × 4 mm × 5 mm × 20 MPa × 18 mm = 14.4 N m.
    expect(flangeBearingTorque.of({ s_n: 0.5, n: 4, p: 20e6, d: 4e-3, t: 5e-3, r: 18e-3 })).toBeCloseTo(
      14.4,
      9,
    );
  });
});
