/** Move profiles against their own speed curves, summed by the test; duty torque against its definition. */
import { describe, expect, it } from 'vitest';
import { dutyTorque, effectiveTorque, fastestMove, moveTorque } from '@/lib/calc/motion/duty';
import { accelerationTorque, bestRatio, outputAcceleration } from '@/lib/calc/motion/inertia';
import { type MoveProfile, moveProfiles } from '@/lib/calc/motion/profiles';

/** Speed at a share of the time, for a move of unit angle in unit time: written from the shapes, not the formulas. */
const shapes: Readonly<Record<MoveProfile, (s: number) => number>> = {
  trapezoid: (s) => 1.5 * Math.min(1, 3 * s, 3 * (1 - s)),
  triangle: (s) => 2 * Math.min(2 * s, 2 * (1 - s)),
  cosine: (s) => (Math.PI / 2) * Math.sin(Math.PI * s),
};

describe.each(['trapezoid', 'triangle', 'cosine'] as const)('a %s move', (name) => {
  const phi = 1.3;
  const t = 0.4;
  const n = 60_000;
  const speeds = Array.from({ length: n + 1 }, (_, i) => (phi / t) * shapes[name](i / n));
  const profile = moveProfiles[name];

  it('covers its angle, and has the peak speed, peak and effective acceleration of its curve (independent)', () => {
    const dt = t / n;
    const mean = speeds.reduce((a, b) => a + b) / n;
    expect(mean * t).toBeCloseTo(phi, 6);
    expect(profile.speed.of({ phi, t })).toBeCloseTo(Math.max(...speeds.slice(0, 60_000)), 4);
    const rates = speeds.slice(1).map((v, i) => (v - (speeds[i] ?? Number.NaN)) / dt);
    const peak = rates.reduce((a, b) => Math.max(a, Math.abs(b)), 0);
    expect(profile.acceleration.of({ phi, t }) / peak).toBeCloseTo(1, 4);
    const effective = Math.sqrt(rates.reduce((a, b) => a + b ** 2, 0) / n);
    expect(profile.effectiveAcceleration.of({ phi, t }) / effective).toBeCloseTo(1, 4);
  });

  it('takes its least time when one of the limits is just met', () => {
    const limits = { omega_lim: 4, alpha_lim: 30 };
    for (const angle of [0.2, 2, 20]) {
      const time = profile.leastTime.of({ phi: angle, ...limits });
      const use = Math.max(
        profile.speed.of({ phi: angle, t: time }) / 4,
        profile.acceleration.of({ phi: angle, t: time }) / 30,
      );
      expect(use).toBeCloseTo(1, 9);
      expect(time).toBeGreaterThanOrEqual(fastestMove.of({ phi: angle, ...limits }) - 1e-9);
    }
  });
});

describe('the duty', () => {
  it('has the effective torque of its phases, load and acceleration in thirds (independent)', () => {
    const profile = moveProfiles.trapezoid;
    const alpha = profile.acceleration.of({ phi: 1.5, t: 0.6 });
    const J_out = 0.2;
    const T_a = accelerationTorque.of({ J_out, alpha_out: alpha });
    const T_L = 3;
    const T_move = moveTorque.of({
      T_L,
      J_out,
      alpha_rms: profile.effectiveAcceleration.of({ phi: 1.5, t: 0.6 }),
    });
    const thirds = [T_L + T_a, T_L, T_L - T_a].map((torque) => ({ torque, duration: 0.2 }));
    expect(T_move).toBeCloseTo(effectiveTorque(thirds), 9);
    const rested = (t_held: number) => dutyTorque.of({ T_move, t_move: 0.6, T_rest: T_L, t_held, t_rest: 2 });
    expect(rested(2)).toBeCloseTo(effectiveTorque([...thirds, { torque: T_L, duration: 2 }]), 9);
    expect(rested(50)).toBe(rested(2));
    expect(rested(0.5)).toBeCloseTo(
      effectiveTorque([...thirds, { torque: T_L, duration: 0.5 }, { torque: 0, duration: 1.5 }]),
      9,
    );
    expect(effectiveTorque([])).toBe(0);
  });

  it('accelerates best at the ratio that a search finds (independent)', () => {
    const g = { T_L: 2, T_m: 0.5, J_L: 0.05, J_m: 2e-5 };
    const at = (N: number) => outputAcceleration.of({ ...g, N, eta: 1 });
    let best = 1;
    for (let N = 1; N < 300; N += 0.01) if (at(N) > at(best)) best = N;
    expect(bestRatio.of(g)).toBeCloseTo(best, 1);
  });
});
