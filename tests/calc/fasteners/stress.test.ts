/** Stress in tightened screws against a standard's table; circles of screws against the elastic group; thread limits against their tolerances. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as sut from '@/lib/calc/fasteners/case';
import {
  fastenerForces,
  frictionTorque,
  groupMiddle,
  relievedFrictionTorque,
} from '@/lib/calc/fasteners/group';
import { clampingForce } from '@/lib/calc/fasteners/joint';
import { proofForce, torqueByFriction } from '@/lib/calc/fasteners/preload';
import * as stress from '@/lib/calc/fasteners/stress';
import { minorDiameter, nutStripArea, pitchDiameter, stressArea } from '@/lib/calc/fasteners/thread';
import { screwClasses, screwSizes } from '@/lib/catalog/fasteners/labels';
import { preloadScatter, screwSeat, threadLimits } from '@/lib/catalog/fasteners/limits';
import { screwThreads, strengthClasses } from '@/lib/catalog/fasteners/screws';

const range = (min: number, max: number) => fc.double({ min, max, noNaN: true });

function thread(size: string) {
  const row = screwThreads.rows.find((r) => r.size === size);
  if (row === undefined) throw new Error(size);
  const [d, P] = [row.d * 1e-3, row.P * 1e-3];
  const [d_2, d_3] = [pitchDiameter.of({ d, P }), minorDiameter.of({ d, P })];
  return { d, P, d_2, d_3, A_s: stressArea.of({ d_2, d_3 }) };
}

/**
 * Preload at which the equivalent stress while tightening is 0.9 of yield. The standard tabulates it with the torsion
 * of a section that yields throughout, 12 T / π d³: three quarters of the elastic one.
 */
function assemblyPreload(size: string, yieldStrength: number, mu_t: number): number {
  const { P, d_2, d_3, A_s } = thread(size);
  const T_G = stress.threadTorque.of({ F_i: 1, P, mu_t, d_2 });
  const each = stress.screwStress.of({
    sigma_s: stress.screwTension.of({ F_b: 1, A_s }),
    k_tau: 0.75,
    tau_G: stress.screwTorsion.of({ T_G, d_2, d_3 }),
  });
  return (0.9 * yieldStrength) / each;
}

describe('a screw while it is tightened', () => {
  // VDI 2230 Part 1, Table A1 (from memory): assembly preloads of class 8.8 at 90 % of yield, µ = 0.12, kN.
  it.each([
    ['M4', 4.4],
    ['M5', 7.2],
    ['M6', 10.2],
    ['M8', 18.6],
    ['M10', 29.6],
  ])('%s of class 8.8 at a friction of 0.12 reaches 0.9 of its yield at about %d kN', (size, kN) => {
    const F = assemblyPreload(size, strengthClasses['8.8'].yield, 0.12);
    expect(Math.abs(F / 1e3 / kN - 1)).toBeLessThan(0.015);
  });

  it('carries in its thread the torque that the wrench gives less what rubs under the head', () => {
    const { P, d_2 } = thread('M5');
    const g = { F_i: 4000, P, mu_t: 0.12, d_2 };
    const whole = torqueByFriction.of({ ...g, mu_b: 0.12, D_w: 8.03e-3, D_h: 5.5e-3 });
    const head = (4000 * 0.12 * (8.03e-3 + 5.5e-3)) / 4;
    expect(stress.threadTorque.of(g) + head).toBeCloseTo(whole, 12);
  });

  it('is less stressed in service, when half of the torsion has gone', () => {
    const g = { sigma_s: 400e6, tau_G: 150e6 };
    expect(stress.screwStress.of({ ...g, k_tau: 0.5 })).toBeLessThan(
      stress.screwStress.of({ ...g, k_tau: 1 }),
    );
    expect(stress.screwStress.of({ ...g, k_tau: 0 })).toBeCloseTo(400e6, 3);
  });

  it('presses the ring under its head by force over area, worked ring by ring (midpoint rule)', () => {
    const [D_w, D_h] = [5.07e-3, 3.4e-3];
    let area = 0;
    const n = 1000;
    for (let k = 0; k < n; k += 1) {
      const r = D_h / 2 + ((k + 0.5) / n) * ((D_w - D_h) / 2);
      area += 2 * Math.PI * r * ((D_w - D_h) / 2 / n);
    }
    expect(stress.headPressure.of({ F_b: 1000, D_w, D_h }) * area).toBeCloseTo(1000, 6);
  });

  it('shears at 0.6 of its tensile strength in class 8.8 (EN 1993-1-8, from memory)', () => {
    const c = strengthClasses['8.8'];
    expect(stress.screwShearStrength.of({ a_v: c.shear, R_m: c.tensile })).toBeCloseTo(480e6, 3);
  });
});

describe('a circle of screws', () => {
  const circle = (n: number, r: number) =>
    Array.from({ length: n }, (_, k) => ({
      x: r * Math.cos((2 * Math.PI * k) / n),
      y: r * Math.sin((2 * Math.PI * k) / n),
    }));

  it('shares a torque as the elastic group does (seed 898)', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 12 }), range(5e-3, 0.2), range(0.1, 200), (n, r, T_react) => {
        const forces = fastenerForces(circle(n, r), { x: 0, y: 0, V_x: 0, V_y: 0, T: T_react }) ?? [];
        for (const F of forces) expect(F / sut.shearOfTorque.of({ T_react, n, r })).toBeCloseTo(1, 9);
      }),
      { seed: 898 },
    );
  });

  it('pulls hardest where a rigid flange on equal springs stretches most (seed 899)', () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 12 }), range(0.01, 0.2), range(0, 0.3), (n, r, e) => {
        const F = 1000;
        const places = circle(n, r);
        // About the y axis: the pull acts at x = e, towards the screw at x = r.
        const about = places.reduce((sum, p) => sum + p.x ** 2, 0);
        const most = Math.max(...places.map((p) => F / n + (F * e * p.x) / about));
        expect(sut.pullOnCircle.of({ F, n, e, r }) / most).toBeCloseTo(1, 9);
        expect((groupMiddle(places)?.S_r ?? 0) / 2 / about).toBeCloseTo(1, 9);
      }),
      { seed: 899 },
    );
  });

  it('needs the preload at which friction just holds', () => {
    const g = { mu: 0.2, n: 4, r: 0.03 };
    const F_i = sut.preloadForTorque.of({ ...g, T_react: 18 });
    expect(frictionTorque.of({ ...g, F_i })).toBeCloseTo(18, 12);
  });

  it('slips at the same load, whether the pull is taken off the friction or put on top of the torque', () => {
    const g = { mu: 0.2, n: 4, r: 0.03, F_i: 600, C_j: 0.2 };
    // At this load friction just holds: the torque left under the pull is the torque that acts.
    const [T_react, F] = [10, (4 * 600 - 10 / (0.2 * 0.03)) / 0.8];
    expect(relievedFrictionTorque.of({ ...g, F })).toBeCloseTo(T_react, 9);
    expect(sut.slipDemand.of({ ...g, T_react, F })).toBeCloseTo(frictionTorque.of(g), 9);
  });

  it('parts where the preload left is the part of the pull that the joint feels', () => {
    const g = { C_j: 0.25, F_t: 800 };
    expect(clampingForce.of({ F_i: sut.partingPull.of(g), C_j: g.C_j, F: g.F_t })).toBeCloseTo(0, 9);
    expect(sut.shockForce.of({ F: 400, K_A: 1.25 })).toBe(500);
    expect(sut.scatteredPreload.of({ s_a: preloadScatter.low, F_i: 1000 })).toBe(700);
  });

  it('holds against the force of a mesh, tangential and radial together, as the normal force without helix', () => {
    const F_t = 500;
    const F_r = F_t * Math.tan((20 * Math.PI) / 180);
    expect(sut.meshForce.of({ F_t, F_r })).toBeCloseTo(F_t / Math.cos((20 * Math.PI) / 180), 9);
  });
});

describe('the tables of threads', () => {
  // Tolerances of ISO 965-1 (from memory): grade 6 and deviation g, rounded to the series R40.
  it.each(screwThreads.rows.map((row) => [row.size, row] as const))(
    '%s keeps the tolerances 6H/6g within their rounding',
    (size, { d, P }) => {
      const limit = threadLimits(size);
      if (limit === undefined) throw new Error(size);
      const d_2 = d - 0.649519 * P;
      const inner = d - 1.082532 * P;
      const es = (15 + 11 * P) / 1000;
      const middle =
        d <= 2.8 ? Math.sqrt(1.4 * 2.8) : d <= 5.6 ? Math.sqrt(2.8 * 5.6) : Math.sqrt(5.6 * 11.2);
      const Td = (180 * P ** (2 / 3) - 3.15 / Math.sqrt(P)) / 1000;
      const Td2 = (90 * P ** 0.4 * middle ** 0.1) / 1000;
      const TD1 = (P < 1 ? 433 * P - 190 * P ** 1.22 : 230 * P ** 0.7) / 1000;
      // One step of R40 is 6 %; so is what rounding may move.
      const near = (value: number, tolerance: number) =>
        expect(Math.abs(value / tolerance - 1), `${size} ${value} ${tolerance}`).toBeLessThan(0.06);
      near(d - limit.screwOuterMin / 1e3 - es, Td);
      near(d_2 - limit.screwPitchMin / 1e3 - es, Td2);
      near(limit.nutPitchMax / 1e3 - d_2, 1.32 * Td2);
      near(limit.nutMinorMax / 1e3 - inner, TD1);
    },
  );

  it('name for every size a head that covers its hole and a washer that is wider', () => {
    for (const { size, d } of screwThreads.rows) {
      const seat = screwSeat(size);
      if (seat === undefined) throw new Error(size);
      expect(seat.hole).toBeGreaterThan(d);
      expect(seat.head).toBeGreaterThan(seat.hole);
      expect(seat.washer).toBeGreaterThan(seat.head);
      expect(seat.nut / d).toBeGreaterThan(0.75);
    }
    expect(screwSeat('M7')).toBeUndefined();
    expect(threadLimits('M7')).toBeUndefined();
  });

  it('hold every size and class that a document may name, and no other', () => {
    expect(Object.keys(screwClasses)).toEqual(Object.keys(strengthClasses));
    expect(Object.keys(screwSizes)).toEqual(screwThreads.rows.map((row) => row.size));
  });

  // ISO 898-1: class x.y has x·100 MPa nominal tensile and y tenths of that nominal yield; least values lie a little above.
  it('hold classes whose names say their strength', () => {
    for (const [name, c] of Object.entries(strengthClasses)) {
      expect(c.proof).toBeLessThanOrEqual(c.yield);
      expect(c.yield).toBeLessThan(c.tensile);
      const [, whole, tenths] = /^(\d+)\.(\d)$/.exec(name) ?? [];
      if (whole === undefined || tenths === undefined) continue;
      const nominal = Number(whole) * 100e6;
      expect(c.tensile / nominal).toBeGreaterThanOrEqual(1);
      expect(c.tensile / nominal).toBeLessThan(1.06);
      const nominalYield = (nominal * Number(tenths)) / 10;
      expect(c.yield / nominalYield).toBeGreaterThan(0.99);
      expect(c.yield / nominalYield).toBeLessThan(1.07);
    }
  });

  // ISO 898-2: nuts of the screw’s class and full height do not strip before the screw breaks.
  it('let a nut of class 8 and 0.8 d strip later than a screw of class 8.8 breaks', () => {
    for (const { size, d, P } of screwThreads.rows) {
      const limit = threadLimits(size);
      const seat = screwSeat(size);
      if (limit === undefined || seat === undefined) throw new Error(size);
      const A_sh = nutStripArea.of({
        D_s: limit.screwOuterMin / 1e3,
        L_e: seat.nut,
        P,
        E_n: limit.nutPitchMax / 1e3,
      });
      const strips = A_sh * 0.6 * 800;
      const breaks = proofForce.of({
        S_p: 800e6,
        A_s: stressArea.of({ d_2: d - 0.649519 * P, d_3: d - 1.226869 * P }) * 1e-6,
      });
      expect(strips, size).toBeGreaterThan(breaks);
    }
  });
});
