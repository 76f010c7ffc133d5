/** Mesh stiffness against the standard's own figures, springs against energy, resonance against motion worked in time. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as mesh from '@/lib/calc/gears/backlash/mesh-stiffness';
import * as spring from '@/lib/calc/gears/backlash/wind-up';
import { degree, many, range, relative } from '../draws';

const steel = 2.06e11;

/** Single stiffness of an unshifted steel pair with the given rack depth. */
function single(z_n1: number, z_n2: number, h_fP: number): number {
  const q_pr = mesh.toothCompliance.of({ q_0: 1e-9, z_n1, z_n2, x_1: 0, x_2: 0 });
  const C_B = mesh.rackStiffnessFactor.of({ h_fP, alpha_n: 20 * degree });
  return mesh.singleStiffness.of({ C_R: 1, C_B, beta: 0, q_pr });
}

describe('the stiffness of steel teeth', () => {
  // ISO 6336-1 method C (from memory): c' = 14 and c_gamma = 20 N/(mm µm) for solid steel discs; printed to two figures.
  it('is about 14 N/(mm µm) for a pair and 20 for the mesh, the standard’s round figures', () => {
    const c_pr = single(25, 50, 1.2);
    expect(Math.abs(c_pr / 1e9 - 14)).toBeLessThan(0.5);
    expect(Math.abs(mesh.meshStiffness.of({ c_pr, eps_alpha: 1.6 }) / 1e9 - 20)).toBeLessThan(0.5);
  });

  it('grows with the number of teeth, and a ring gear counts as one without end', () => {
    expect(single(40, 80, 1.25)).toBeGreaterThan(single(17, 34, 1.25));
    expect(single(20, 1e12, 1.25)).toBeGreaterThan(single(20, 200, 1.25));
    expect(Number.isFinite(single(20, Number.POSITIVE_INFINITY, 1.25))).toBe(true);
  });

  it('joins that at light load without a step at 100 N/mm', () => {
    expect(mesh.lightLoadStiffness.of({ c_pr: 14e9, w: 1e5, w_0: 1e5 })).toBeCloseTo(14e9, 0);
    expect(mesh.lightLoadStiffness.of({ c_pr: 14e9, w: 6250, w_0: 1e5 })).toBeCloseTo(7e9, 0);
  });

  it('is as recalled from the standard for a rack of 20° and depth 1.2', () => {
    expect(mesh.rackStiffnessFactor.of({ h_fP: 1.2, alpha_n: 20 * degree })).toBeCloseTo(1, 12);
  });
});

describe('the stiffness of teeth of other materials', () => {
  // Independent derivation: the two teeth of a pair as springs in series, each as much softer as its modulus is smaller.
  it('is that of two teeth in series', () => {
    fc.assert(
      fc.property(range(1e9, 2.1e11), range(1e9, 2.1e11), (E_1, E_2) => {
        const c_pr = 14e9;
        const tooth = (E: number) => (2 * c_pr * E) / steel;
        const series = 1 / (1 / tooth(E_1) + 1 / tooth(E_2));
        expect(relative(mesh.stiffnessByModulus.of({ c_pr, E_1, E_2, E_St: steel }), series)).toBeLessThan(
          1e-12,
        );
      }),
      many,
    );
  });

  it('is nearly double with a steel mate than with one of the same plastic', () => {
    const g = { c_pr: 14e9, E_1: 2.5e9, E_St: steel };
    const gain =
      mesh.stiffnessByModulus.of({ ...g, E_2: steel }) / mesh.stiffnessByModulus.of({ ...g, E_2: 2.5e9 });
    expect(gain).toBeGreaterThan(1.95);
    expect(gain).toBeLessThan(2);
  });
});

describe('the give of a train at its output', () => {
  // Independent derivation: energy. Every spring carries the output torque over its ratio; what they store is T φ / 2.
  it('stores the energy of all its springs', () => {
    const springs = [
      { k: 40, i_after: 9 },
      { k: 300, i_after: 3 },
      { k: 900, i_after: 1 },
    ];
    const T = 25;
    const k_sum = springs
      .map((s) => spring.stiffnessAtOutput.of(s))
      .reduce((k_before, k_out) => spring.stiffnessInSeries.of({ k_before, k_out }));
    const stored = springs.reduce((sum, s) => sum + (T / s.i_after) ** 2 / (2 * s.k), 0);
    expect(relative((T * spring.windUp.of({ T, k_sum })) / 2, stored)).toBeLessThan(1e-12);
    expect(relative(spring.windUpEnergy.of({ T, k_sum }), stored)).toBeLessThan(1e-12);
  });

  // Independent derivation: a force of c b δ at the base radius for an angle of δ over that radius.
  it('takes from a mesh the force along its line of action', () => {
    const g = { c_gamma: 0.3e9, b: 0.01, d_b: 0.05 };
    const angle = 1e-4;
    const force = g.c_gamma * g.b * (angle * g.d_b) * 0.5;
    expect(relative(mesh.meshTorsionalStiffness.of(g) * angle, (force * g.d_b) / 2)).toBeLessThan(1e-12);
  });
});

it('never overrates a warm mesh: two teeth in a row that soften unlike are stiffer than both at the softer’s share', () => {
  const series = (a: number, b: number) => 1 / (1 / a + 1 / b);
  const warm = series(0.5 * 40, 0.9 * 60);
  expect(spring.warmStiffness.of({ k: series(40, 60), f_T: 0.5 })).toBeLessThan(warm);
  expect(spring.warmStiffness.of({ k: series(40, 60), f_T: 0.5 })).toBeGreaterThan(
    series(0.5 * 40, 0.5 * 60) * 0.999,
  );
});

it('twists a shaft between its members, whichever comes first', () => {
  expect(spring.twistedLength.of({ x_1: -0.012, x_2: 0.03 })).toBeCloseTo(0.042, 12);
  expect(spring.twistedLength.of({ x_1: 0.03, x_2: -0.012 })).toBeCloseTo(0.042, 12);
});

describe('the first torsional resonance', () => {
  const g = { k_sum: 400, J_L: 0.05, J_M: 8e-5, i: 20 };

  /** Frequency of arm against rotor from their motion step by step, the rotor at its own shaft behind the ratio. */
  function swing(rotor: 'locked' | 'free'): number {
    const pull = (arm: number, motor: number) => g.k_sum * (motor / g.i - arm);
    const rate = ([arm, vArm, motor, vMotor]: readonly [number, number, number, number]) => {
      const torque = pull(arm, motor);
      const push = rotor === 'free' ? -torque / g.i / g.J_M : 0;
      return [vArm, torque / g.J_L, vMotor, push] as const;
    };
    type State = [number, number, number, number];
    const moved = (s: State, r: readonly [number, number, number, number], h: number): State => [
      s[0] + h * r[0],
      s[1] + h * r[1],
      s[2] + h * r[2],
      s[3] + h * r[3],
    ];
    let s: State = [1e-3, 0, 0, 0];
    const h = 1e-5;
    const crossings: number[] = [];
    for (let n = 0; n < 60000; n++) {
      const twist = s[2] / g.i - s[0];
      const r1 = rate(s);
      const r2 = rate(moved(s, r1, h / 2));
      const r3 = rate(moved(s, r2, h / 2));
      const r4 = rate(moved(s, r3, h));
      const whole = (k: 0 | 1 | 2 | 3) => (r1[k] + 2 * r2[k] + 2 * r3[k] + r4[k]) / 6;
      s = moved(s, [whole(0), whole(1), whole(2), whole(3)], h);
      const next = s[2] / g.i - s[0];
      if (twist < 0 && next >= 0) crossings.push((n + twist / (twist - next)) * h);
    }
    const first = crossings[0] ?? Number.NaN;
    const last = crossings.at(-1) ?? Number.NaN;
    return (crossings.length - 1) / (last - first);
  }

  // Independent derivation: the equations of motion worked in time (Runge–Kutta), the swings counted.
  it('is what arm and train do with the rotor locked', () => {
    expect(relative(spring.lockedResonance.of(g), swing('locked'))).toBeLessThan(1e-5);
  });

  it('is what arm and rotor do against each other with the rotor free', () => {
    expect(relative(spring.freeResonance.of(g), swing('free'))).toBeLessThan(1e-5);
  });

  it('is higher with the rotor free than locked, and the same for a rotor too heavy to move', () => {
    expect(spring.freeResonance.of(g)).toBeGreaterThan(spring.lockedResonance.of(g));
    expect(relative(spring.freeResonance.of({ ...g, J_M: 1e9 }), spring.lockedResonance.of(g))).toBeLessThan(
      1e-9,
    );
  });
});
