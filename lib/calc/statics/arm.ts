// Torque of an arm's weight, and what the output torque does to whatever holds the actuator.
import { formula } from '../formula';

/** Torque of a weight on an arm about the output axis, N m; phi is the angle above the horizontal. */
export const gravityTorque = formula({
  key: 'statics.gravityTorque',
  symbol: 'T_g',
  name: 'Torque of a weight on the arm',
  unit: 'N m',
  given: { m: 'kg', g_n: 'm/s^2', r: 'm', phi: 'rad' },
  text: 'm * g_n * r * cos(phi)',
  source: 'Statics; g_n = 9.80665 m/s² (ISO 80000-3)',
  of: (g) => g.m * g.g_n * g.r * Math.cos(g.phi),
});

/** Greatest torque of arm and tip mass about the output axis, N m: the arm level. */
export const armTorque = formula({
  key: 'statics.armTorque',
  symbol: 'T_arm',
  name: 'Greatest torque of the arm’s weight',
  unit: 'N m',
  given: { m_arm: 'kg', r_cm: 'm', m_tip: 'kg', r_arm: 'm', g_n: 'm/s^2' },
  text: '(m_arm * r_cm + m_tip * r_arm) * g_n',
  source: 'Statics; g_n = 9.80665 m/s² (ISO 80000-3)',
  of: (g) => (g.m_arm * g.r_cm + g.m_tip * g.r_arm) * g.g_n,
});

/** Torque that the rig must hold, N m: the whole output torque, whatever the ratio inside, with a factor for shock. */
export const reactionTorque = formula({
  key: 'statics.reactionTorque',
  symbol: 'T_react',
  name: 'Reaction torque on the rig',
  unit: 'N m',
  given: { T_out: 'N m', k_shock: '1' },
  text: 'k_shock * T_out',
  source: 'Equilibrium of the whole actuator; the shock factor is judgement',
  of: (g) => g.k_shock * g.T_out,
});

/** Force of a couple that holds a torque over a distance, N. */
export const coupleForce = formula({
  key: 'statics.coupleForce',
  symbol: 'F_couple',
  name: 'Force of the holding couple',
  unit: 'N',
  given: { T_react: 'N m', l: 'm' },
  text: 'T_react / l',
  source: 'Statics',
  of: (g) => g.T_react / g.l,
});

/** Force at the tip of an arm, N. */
export const tipForce = formula({
  key: 'statics.tipForce',
  symbol: 'F_tip',
  name: 'Force at the tip of the arm',
  unit: 'N',
  given: { T_out: 'N m', r: 'm' },
  text: 'T_out / r',
  source: 'Statics',
  of: (g) => g.T_out / g.r,
});
