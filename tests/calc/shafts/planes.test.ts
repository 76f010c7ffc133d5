/** Forces in two planes against equilibrium in space, solved by a general linear-algebra library with cross products. */
import fc from 'fast-check';
import { cross, lusolve } from 'mathjs';
import { expect, it } from 'vitest';
import { reactions } from '@/lib/calc/shafts/beam/beam';
import * as planes from '@/lib/calc/shafts/beam/planes';

type Vector = readonly [number, number, number];

interface Mesh {
  readonly x: number;
  readonly d: number;
  readonly phi_a: number;
  /** Whether the other axis lies towards phi_a, how F_t turns the part, which way F_a runs there. */
  readonly s_m: number;
  readonly s_t: number;
  readonly s_a: number;
  readonly F_r: number;
  readonly F_t: number;
  readonly F_a: number;
}

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const mesh = fc.record({
  x: between(-0.05, 0.15),
  d: between(0.01, 0.1),
  phi_a: between(-3.1, 3.1),
  s_m: fc.constantFrom(-1, 1),
  s_t: fc.constantFrom(-1, 0, 1),
  s_a: fc.constantFrom(-1, 1),
  F_r: between(-300, 300),
  F_t: between(-800, 800),
  F_a: between(-300, 300),
});

/** Force and moment about A of one mesh, by vectors alone. */
function inSpace(m: Mesh): { readonly force: Vector; readonly moment: Vector } {
  // Towards the other axis, where the contact is.
  const out: Vector = [0, m.s_m * Math.cos(m.phi_a), m.s_m * Math.sin(m.phi_a)];
  // The way round from y to z: x × out.
  const round = cross([1, 0, 0], [...out]) as number[]; // mathjs types a cross product as matrix or array; arrays give an array
  const F_t = m.s_t * m.F_t;
  const force: Vector = [
    // s_a says which way F_a runs where it acts towards phi_a; towards the other side it has the other sign.
    m.s_a * m.s_m * m.F_a,
    -m.F_r * out[1] + F_t * (round[1] ?? Number.NaN),
    -m.F_r * out[2] + F_t * (round[2] ?? Number.NaN),
  ];
  const arm = [m.x, (m.d / 2) * out[1], (m.d / 2) * out[2]];
  const [x = Number.NaN, y = Number.NaN, z = Number.NaN] = cross(arm, [...force]) as number[];
  return { force, moment: [x, y, z] };
}

it('gives the bearings the forces that equilibrium in space gives them (seed 1586)', () => {
  fc.assert(
    fc.property(fc.array(mesh, { minLength: 1, maxLength: 3 }), between(0.03, 0.1), (meshes, l) => {
      const loads = meshes.map(inSpace);
      const sum = (pick: (load: (typeof loads)[number]) => number) => loads.reduce((s, m) => s + pick(m), 0);
      // Unknown: A_y, A_z, B_y, B_z. Forces in y and z, moments about y and z: B at x = l gives (−l B_z, l B_y).
      const solved = lusolve(
        [
          [1, 0, 1, 0],
          [0, 1, 0, 1],
          [0, 0, 0, -l],
          [0, 0, l, 0],
        ],
        [
          -sum((m) => m.force[1]),
          -sum((m) => m.force[2]),
          -sum((m) => m.moment[1]),
          -sum((m) => m.moment[2]),
        ],
      ) as unknown as number[][]; // mathjs types the solution loosely; given arrays it returns a column as an array
      const beam = (plane: 'y' | 'z') =>
        reactions({
          x_A: 0,
          x_B: l,
          E: 1,
          I: 1,
          loads: meshes.map((m) => ({
            a: m.x,
            F: plane === 'y' ? planes.forceInPlaneY.of(m) : planes.forceInPlaneZ.of(m),
            M_0: plane === 'y' ? planes.axialCoupleY.of(m) : planes.axialCoupleZ.of(m),
          })),
        });
      const own = [beam('y').R_A, beam('z').R_A, beam('y').R_B, beam('z').R_B];
      own.forEach((force, i) => {
        expect(Math.abs(force - (solved[i]?.[0] ?? Number.NaN))).toBeLessThan(1e-7);
      });
    }),
    { seed: 1586 },
  );
});

it('turns the part by the tangential force alone: force times radius (seed 1587)', () => {
  fc.assert(
    fc.property(mesh, (m) => {
      expect(inSpace(m).moment[0]).toBeCloseTo((m.s_t * m.F_t * m.d) / 2, 9);
    }),
    { seed: 1587 },
  );
});

it('puts equal and opposite forces on both parts of an external mesh', () => {
  const g = { F_r: 120, F_t: 330, phi_a: 0.7 };
  // Seen from the mate the line of centres runs the other way, and the mesh turns both parts the same way round.
  for (const f of [planes.forceInPlaneY, planes.forceInPlaneZ])
    expect(f.of({ ...g, s_m: 1, s_t: 1 })).toBeCloseTo(-f.of({ ...g, s_m: -1, s_t: 1 }), 9);
});

it('puts equal and opposite forces on a pinion and the ring about it', () => {
  const g = { F_r: 120, F_t: 330, phi_a: 0.7 };
  // The contact lies beyond the pinion’s centre; the mesh draws both axes together and turns both opposite ways.
  for (const f of [planes.forceInPlaneY, planes.forceInPlaneZ])
    expect(f.of({ ...g, F_r: -g.F_r, s_m: 1, s_t: -1 })).toBeCloseTo(
      -f.of({ ...g, F_r: -g.F_r, s_m: -1, s_t: -1 }),
      9,
    );
});

it('keeps the size of a force when both planes are taken together (seed 1588)', () => {
  fc.assert(
    fc.property(mesh, (m) => {
      const F_y = planes.forceInPlaneY.of(m);
      const F_z = planes.forceInPlaneZ.of(m);
      expect(planes.resultantForce.of({ F_y, F_z })).toBeCloseTo(Math.hypot(m.F_r, m.s_t * m.F_t), 8);
    }),
    { seed: 1588 },
  );
  expect(planes.resultantDeflection.of({ y_y: 3e-6, y_z: -4e-6 })).toBeCloseTo(5e-6, 15);
  expect(planes.resultantSlope.of({ theta_y: -5e-4, theta_z: 12e-4 })).toBeCloseTo(13e-4, 12);
});

it('lays the force of an arm in one line with another and keeps its size', () => {
  const W = planes.hangingWeight.of({ g_n: 9.80665, m_arm: 0.3, m_tip: 0.7 });
  const F_arm = planes.armForce.of({ T: 12, l: 0.4, W });
  expect(F_arm).toBeCloseTo(30 + 9.80665, 9);
  const at = { s_f: -1, F_arm, F_rad: 50 };
  const F_y = planes.forceInLine.of({ ...at, F_plane: 30 });
  const F_z = planes.forceInLine.of({ ...at, F_plane: 40 });
  expect(Math.hypot(F_y, F_z)).toBeCloseTo(F_arm, 9);
  expect(F_y / F_z).toBeCloseTo(0.75, 9);
  expect(F_y).toBeLessThan(0);
});
