/** Planetary sets: play as the room a planet leaves between sun and ring, stiffness by energy; tolerances at their corners. */
import fc from 'fast-check';
import { lusolve } from 'mathjs';
import { describe, expect, it } from 'vitest';
import * as limits from '@/lib/calc/gears/backlash/limits';
import { backlashByDistanceChange } from '@/lib/calc/gears/backlash/mesh';
import { meshTorsionalStiffness } from '@/lib/calc/gears/backlash/mesh-stiffness';
import * as set from '@/lib/calc/gears/backlash/set-stiffness';
import { beltTorsionalStiffness } from '@/lib/calc/gears/belt/tension';
import { backlashFromCentreDistance } from '@/lib/calc/gears/service/mesh';
import { degree, many, range, relative } from '../draws';

describe('the play of a planetary set', () => {
  // Independent derivation: the planet shifts by a φ and turns by θ; it touches the sun at |a φ + r θ| = j_s/2 and the
  // ring at |a φ − r θ| = j_r/2. The widest φ is searched over θ.
  it('at its carrier is the widest room that a planet finds between sun and ring', () => {
    fc.assert(
      fc.property(range(0.01, 0.3), range(0.01, 0.3), (j_s, j_r) => {
        const a = 30;
        let widest = 0;
        for (let k = -20000; k <= 20000; k += 1) {
          const turn = (k / 20000) * 0.5;
          const most = Math.min(j_s / 2 - turn, j_r / 2 + turn);
          if (most >= 0) widest = Math.max(widest, most / a);
        }
        expect(relative(limits.carrierBacklash.of({ j_s, j_r, a }), 2 * widest)).toBeLessThan(2e-3);
      }),
      { ...many, numRuns: 20 },
    );
  });

  it('at its ring is that of two meshes one after the other', () => {
    const [j_s, j_r, d_w] = [0.1, 0.06, 90];
    // The sun held, the planet turns by j_s over its radius, and the ring by that and its own play.
    expect(limits.ringBacklash.of({ j_s, j_r, d_w })).toBeCloseTo((j_s + j_r) / 45, 12);
  });
});

describe('the stiffness of a planetary set', () => {
  // Independent derivation: one planet's shift u and roll w on two springs, solved by a general library for a push on its pin.
  it('at its carrier is what a planet on two springs gives to a push on its pin', () => {
    fc.assert(
      fc.property(range(1e6, 1e8), range(1e6, 1e8), fc.integer({ min: 3, max: 6 }), (c_s, c_r, N) => {
        const a = 0.03;
        const push = 100;
        // Give at the sun u + w, at the ring u − w; the forces there add up to the push and turn the planet neither way.
        const solved = lusolve(
          [
            [c_s + c_r, c_s - c_r],
            [c_s - c_r, c_s + c_r],
          ],
          [push, 0],
        ) as unknown as number[][]; // mathjs types the solution loosely; given arrays it returns a column as an array
        const u = solved[0]?.[0] ?? Number.NaN;
        const k_one = (push * a) / (u / a);
        expect(relative(set.carrierStiffness.of({ N, a, c_s, c_r }), N * k_one)).toBeLessThan(1e-9);
      }),
      many,
    );
  });

  it('at its ring is that of two meshes in a row at the pitch circle, for each planet', () => {
    const g = { N: 3, d_w: 0.09, c_s: 2e7, c_r: 3e7 };
    const T = 10;
    const F = T / 3 / 0.045;
    const angle = (F / g.c_s + F / g.c_r) / 0.045;
    expect(relative(set.ringStiffness.of(g) * angle, T)).toBeLessThan(1e-12);
  });

  it('of one mesh along the pitch circle is the same spring as along the line of action', () => {
    const g = { c_gamma: 1e10, b: 0.01 };
    const [d_w, alpha_wt] = [0.05, 21 * degree];
    const c_w = set.meshPitchStiffness.of({ ...g, alpha_wt });
    const k = meshTorsionalStiffness.of({ ...g, d_b: d_w * Math.cos(alpha_wt) });
    expect(relative(c_w * (d_w / 2) ** 2, k)).toBeLessThan(1e-12);
  });

  it('of a belt with one strand slack is half of that with both taut', () => {
    const g = { c_sp: 2e5, l_s: 0.1, d: 0.04 };
    expect(relative(2 * set.slackBeltStiffness.of(g), beltTorsionalStiffness.of(g))).toBeLessThan(1e-12);
  });
});

describe('the tolerances of a mesh', () => {
  const a0 = 0.05;
  const alpha = 22 * degree;
  const a_d = (a0 * Math.cos(alpha)) / Math.cos(20 * degree);
  const play = (a: number) =>
    backlashFromCentreDistance.of({
      a,
      alpha_wt: Math.acos((a_d * Math.cos(20 * degree)) / a),
      alpha_w0: alpha,
    });

  it('move the play by what the tangent says to first order, either way', () => {
    for (const s_a of [-1, 1]) {
      const near = limits.centreAtLimit.of({ a: a0 + 1e-4, s_a, A_a: 5e-5 });
      const linear = backlashByDistanceChange.of({ Delta_a: 1e-4 + s_a * 5e-5, alpha_wt: alpha });
      expect(relative(play(near), linear)).toBeLessThan(0.015);
    }
  });

  it('are least and largest at two corners of the four', () => {
    const all = [-1, 1].flatMap((s_a) =>
      [-1, 1].map((s_t) =>
        limits.thinnedBacklash.of({
          j_a: play(limits.centreAtLimit.of({ a: a0 + 1e-4, s_a, A_a: 5e-5 })),
          A_s: 3e-5,
          s_t,
          T_s: 1e-5,
        }),
      ),
    );
    expect(Math.min(...all)).toBe(all[0]);
    expect(Math.max(...all)).toBe(all[3]);
  });
});
