// Holding a rig on a bench: tipping, sliding, clamps. Design on the low end of a clamp's force and retighten after creep.
import { formula } from '../formula';

const statics = 'Statics of a rigid block';

/** Horizontal push that tips a block, N: W weight, b base, h height of the push, F_c clamp force at a from the edge. */
export const tippingForce = formula({
  key: 'statics.tippingForce',
  symbol: 'F_over',
  name: 'Push that tips the rig',
  unit: 'N',
  given: { W: 'N', b: 'm', F_c: 'N', a: 'm', h: 'm' },
  text: '(W * b / 2 + F_c * a) / h',
  source: statics,
  of: (g) => ((g.W * g.b) / 2 + g.F_c * g.a) / g.h,
});

/** Torque about a level axis along the bench edge that tips a rig, N m. */
export const tippingTorque = formula({
  key: 'statics.tippingTorque',
  symbol: 'T_over',
  name: 'Torque that tips the rig',
  unit: 'N m',
  given: { W: 'N', b: 'm', F_c: 'N', a: 'm' },
  text: 'W * b / 2 + F_c * a',
  source: statics,
  of: (g) => (g.W * g.b) / 2 + g.F_c * g.a,
});

/** Push that slides a clamped block, N: the clamp holds with both faces. */
export const slidingForce = formula({
  key: 'statics.slidingForce',
  symbol: 'F_slide',
  name: 'Push that slides the rig',
  unit: 'N',
  given: { mu: '1', W: 'N', F_c: 'N' },
  text: 'mu * W + 2 * mu * F_c',
  source: 'Dry friction; both faces of the clamp hold',
  domain: { mu: [0.05, 0.6] },
  of: (g) => g.mu * g.W + 2 * g.mu * g.F_c,
});

/** Height above which a pushed block tips before it slides, m. */
export const criticalHeight = formula({
  key: 'statics.criticalHeight',
  symbol: 'h_crit',
  name: 'Height of push at which tipping comes first',
  unit: 'm',
  given: { b: 'm', mu: '1' },
  text: 'b / (2 * mu)',
  source: statics,
  domain: { mu: [0.05, 0.6] },
  of: (g) => g.b / (2 * g.mu),
});

/** Force under a block pushed at an angle downward, N. */
export const pushNormalForce = formula({
  key: 'statics.pushNormalForce',
  symbol: 'F_n',
  name: 'Force on the ground under an oblique push',
  unit: 'N',
  given: { W: 'N', P: 'N', psi: 'rad' },
  text: 'W + P * sin(psi)',
  source: 'Hibbeler, Statics, Example 8.1, from memory',
  of: (g) => g.W + g.P * Math.sin(g.psi),
});

/** Where that force acts, m from the middle, positive ahead: beyond b/2 the block tips. */
export const pushNormalOffset = formula({
  key: 'statics.pushNormalOffset',
  symbol: 'x_n',
  name: 'Offset of the ground force',
  unit: 'm',
  given: { P: 'N', psi: 'rad', h: 'm', b: 'm', F_n: 'N' },
  text: '(P * cos(psi) * h - P * sin(psi) * b / 2) / F_n',
  source: 'Hibbeler, Statics, Example 8.1, from memory',
  of: (g) => (g.P * Math.cos(g.psi) * g.h - (g.P * Math.sin(g.psi) * g.b) / 2) / g.F_n,
});

/** Torque about an axis square to the bench that n clamps hold by friction, N m; r from the axis to a clamp. */
export const clampTorque = formula({
  key: 'statics.clampTorque',
  symbol: 'T_clamp',
  name: 'Torque held by clamps',
  unit: 'N m',
  given: { n_f: '1', mu: '1', n: '1', F_c: 'N', r: 'm' },
  text: 'n_f * mu * n * F_c * r',
  source: 'Dry friction; n_f faces hold at each clamp (1, or 2 when both sides do)',
  domain: { mu: [0.05, 0.6], n_f: [1, 2] },
  of: (g) => g.n_f * g.mu * g.n * g.F_c * g.r,
});

/** Force of a lever clamp further out on its arm, N. */
export const clampArmForce = formula({
  key: 'statics.clampArmForce',
  symbol: 'F_x',
  name: 'Clamp force along the arm',
  unit: 'N',
  given: { F_1: 'N', x_1: 'm', x: 'm' },
  text: 'F_1 * x_1 / x',
  source: 'Toggle clamp maker’s technical appendix',
  of: (g) => (g.F_1 * g.x_1) / g.x,
});

/** Force of a screw clamp from the torque on its handle, N; d_2 pitch diameter, P pitch, flank half angle beta_f, pad radius r_p. */
export const screwClampForce = formula({
  key: 'statics.screwClampForce',
  symbol: 'F_c',
  name: 'Force of a screw clamp',
  unit: 'N',
  given: { T_h: 'N m', d_2: 'm', P: 'm', mu: '1', beta_f: 'rad', r_p: 'm' },
  text: 'T_h / (d_2 / 2 * tan(atan(P / (pi * d_2)) + atan(mu / cos(beta_f))) + mu * r_p)',
  source: 'Screw mechanics',
  domain: { mu: [0.05, 0.3], beta_f: [0.1, 0.6], d_2: [0.005, 0.02], P: [0.001, 0.004], r_p: [0.002, 0.01] },
  of: (g) =>
    g.T_h /
    ((g.d_2 / 2) * Math.tan(Math.atan(g.P / (Math.PI * g.d_2)) + Math.atan(g.mu / Math.cos(g.beta_f))) +
      g.mu * g.r_p),
});

/**
 * Torque about a level output axis that tips a rig over its nearer edge, N m: weight and n clamps or bolts of F_c (N) each,
 * all centred about the axis, b_f (m) from the axis to the edge.
 */
export const rigTippingTorque = formula({
  key: 'statics.rigTippingTorque',
  symbol: 'T_tip',
  name: 'Torque that tips the rig over its edge',
  unit: 'N m',
  given: { m_rig: 'kg', g_n: 'm/s^2', n: '1', F_c: 'N', b_f: 'm' },
  text: '(m_rig * g_n + n * F_c) * b_f',
  source: statics,
  validity: 'Weight and clamps spread evenly to both sides of the axis; stiff rig and bench.',
  of: (g) => (g.m_rig * g.g_n + g.n * g.F_c) * g.b_f,
});

/** Force of each of n clamps or bolts that keeps a rig from tipping under a torque T_react (N m), N; none below zero. */
export const clampForceAgainstTipping = formula({
  key: 'statics.clampForceAgainstTipping',
  symbol: 'F_need',
  name: 'Clamp force that keeps the rig from tipping',
  unit: 'N',
  given: { T_react: 'N m', b_f: 'm', m_rig: 'kg', g_n: 'm/s^2', n: '1' },
  text: '(T_react / b_f - m_rig * g_n) / n',
  source: statics,
  validity: 'As for the tipping torque.',
  domain: { T_react: [500, 1000], b_f: [0.1, 1], m_rig: [1, 5], g_n: [9.80665, 9.80665] },
  of: (g) => (g.T_react / g.b_f - g.m_rig * g.g_n) / g.n,
});

/** Force of each of n clamps or bolts whose friction holds a torque T_react (N m) about an upright axis, N. */
export const clampForceAgainstTurning = formula({
  key: 'statics.clampForceAgainstTurning',
  symbol: 'F_need',
  name: 'Clamp force that keeps the rig from turning',
  unit: 'N',
  given: { T_react: 'N m', n_f: '1', mu: '1', n: '1', r: 'm' },
  text: 'T_react / (n_f * mu * n * r)',
  source: 'Dry friction; n_f faces hold at each clamp',
  domain: { mu: [0.05, 0.6], n_f: [1, 2] },
  of: (g) => g.T_react / (g.n_f * g.mu * g.n * g.r),
});

/** Torque that the rig must be ready for, N m: what the drive can force, or what the load brings where that is more. */
export const rigTorque = formula({
  key: 'statics.rigTorque',
  symbol: 'T_rig',
  name: 'Torque that the rig must be ready for',
  unit: 'N m',
  given: { T_forced: 'N m', T_load: 'N m' },
  text: 'max(T_forced, T_load)',
  source: 'Equilibrium of the whole actuator; the worse of the two',
  of: (g) => Math.max(g.T_forced, g.T_load),
});

/** Room between the tip of the arm and the edge of the reach kept clear, m; below zero the arm swings outside it. */
export const sweepMargin = formula({
  key: 'statics.sweepMargin',
  symbol: 'Delta_r',
  name: 'Room beyond the tip of the arm',
  unit: 'm',
  given: { r_clear: 'm', r_arm: 'm' },
  text: 'r_clear - r_arm',
  source: 'Geometry',
  domain: { r_clear: [5, 10], r_arm: [0.1, 4] },
  of: (g) => g.r_clear - g.r_arm,
});
