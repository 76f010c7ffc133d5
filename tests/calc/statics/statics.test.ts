/** What weight and torque do to arm and rig. */
import { expect, it } from 'vitest';
import { armTorque, coupleForce, gravityTorque, reactionTorque, tipForce } from '@/lib/calc/statics/arm';
import * as clamp from '@/lib/calc/statics/clamp';
import { clampTorque, screwClampForce, tippingForce, tippingTorque } from '@/lib/calc/statics/clamp';

const g_n = 9.80665;

it('weighs most when level and not at all when upright', () => {
  expect(gravityTorque.of({ m: 2, g_n, r: 0.5, phi: 0 })).toBeCloseTo(9.80665, 9);
  expect(gravityTorque.of({ m: 2, g_n, r: 0.5, phi: Math.PI / 2 })).toBeCloseTo(0, 9);
  const both = armTorque.of({ m_arm: 1, r_cm: 0.2, m_tip: 2, r_arm: 0.5, g_n });
  expect(both).toBeCloseTo(g_n * (0.2 + 1), 9);
});

it('puts the whole output torque on the rig, as a couple over its width', () => {
  const T_react = reactionTorque.of({ T_out: 60, k_shock: 1.5 });
  expect(T_react).toBe(90);
  expect(coupleForce.of({ T_react, l: 0.3 })).toBeCloseTo(300, 9);
  expect(tipForce.of({ T_out: 60, r: 0.5 })).toBe(120);
});

it('tips by a push at the height whose moment is the tipping torque', () => {
  const g = { W: 50, b: 0.12, F_c: 200, a: 0.1 };
  expect(tippingForce.of({ ...g, h: 0.2 }) * 0.2).toBeCloseTo(tippingTorque.of(g), 9);
});

it('holds twice as much when both faces of the clamps rub', () => {
  const g = { mu: 0.2, n: 2, F_c: 2500, r: 0.1 };
  expect(clampTorque.of({ ...g, n_f: 2 })).toBeCloseTo(2 * clampTorque.of({ ...g, n_f: 1 }), 9);
  expect(clampTorque.of({ ...g, n_f: 1 })).toBeCloseTo(100, 9);
});

it('clamps with the force of a frictionless screw by virtual work when nothing rubs (independent)', () => {
  const F = screwClampForce.of({ T_h: 6, d_2: 0.0105, P: 0.003, mu: 0, beta_f: 0.26, r_p: 0.004 });
  // One turn: work 2π T lifts the load by one pitch.
  expect(F).toBeCloseTo((2 * Math.PI * 6) / 0.003, 6);
});

it('tips over the nearer edge when the moments about that edge balance, clamp by clamp (independent)', () => {
  const g = { m_rig: 12, g_n, n: 4, F_c: 900, b_f: 0.14 };
  // Two clamps 0.1 m nearer to the edge, two as much farther; the weight over the axis.
  const moments = 12 * g_n * 0.14 + 2 * 900 * (0.14 - 0.1) + 2 * 900 * (0.14 + 0.1);
  const T_react = clamp.rigTippingTorque.of(g);
  expect(T_react).toBeCloseTo(moments, 9);
  expect(clamp.clampForceAgainstTipping.of({ ...g, T_react })).toBeCloseTo(900, 9);
  expect(clamp.clampForceAgainstTipping.of({ ...g, T_react: 1 })).toBeLessThan(0);
});

it('turns on the bench at the force that holds it by friction', () => {
  const g = { n_f: 1, mu: 0.3, n: 4, r: 0.12 };
  const T_react = clampTorque.of({ ...g, F_c: 900 });
  expect(T_react).toBeCloseTo(0.3 * 4 * 900 * 0.12, 9);
  expect(clamp.clampForceAgainstTurning.of({ ...g, T_react })).toBeCloseTo(900, 9);
});

it('must be ready for the worse of drive and load, and has room where the reach goes beyond the arm', () => {
  expect(clamp.rigTorque.of({ T_forced: 116, T_load: 75 })).toBe(116);
  expect(clamp.rigTorque.of({ T_forced: 20, T_load: 75 })).toBe(75);
  expect(clamp.sweepMargin.of({ r_clear: 0.8, r_arm: 1 })).toBeLessThan(0);
});
