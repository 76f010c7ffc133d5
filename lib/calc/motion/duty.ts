// The duty as a whole: effective (rms) torque, and the fastest move without a set shape.
import { formula } from '../formula';

/** Effective torque over one move, N m: a constant load and an acceleration whose mean over the move is zero. */
export const moveTorque = formula({
  key: 'motion.moveTorque',
  symbol: 'T_move',
  name: 'Effective torque over a move',
  unit: 'N m',
  given: { T_L: 'N m', J_out: 'kg m^2', alpha_rms: 'rad/s^2' },
  text: 'sqrt(T_L^2 + (J_out * alpha_rms)^2)',
  source: 'Definition of the effective value; load constant, acceleration without mean',
  of: (g) => Math.sqrt(g.T_L ** 2 + (g.J_out * g.alpha_rms) ** 2),
});

/** Effective torque of moves and rests in turn, N m: each rest is held with T_rest for t_held (s) and free thereafter. */
export const dutyTorque = formula({
  key: 'motion.dutyTorque',
  symbol: 'T_rms',
  name: 'Effective torque of the duty',
  unit: 'N m',
  given: { T_move: 'N m', t_move: 's', T_rest: 'N m', t_held: 's', t_rest: 's' },
  text: 'sqrt((T_move^2 * t_move + T_rest^2 * min(t_held, t_rest)) / (t_move + t_rest))',
  source: 'Definition of the effective value',
  of: (g) =>
    Math.sqrt(
      (g.T_move ** 2 * g.t_move + g.T_rest ** 2 * Math.min(g.t_held, g.t_rest)) / (g.t_move + g.t_rest),
    ),
});

/** Share of the time in which the actuator moves. */
export const movingShare = formula({
  key: 'motion.movingShare',
  symbol: 's_move',
  name: 'Share of time in motion',
  unit: '1',
  given: { t_move: 's', t_rest: 's' },
  text: 't_move / (t_move + t_rest)',
  source: 'Definition',
  of: (g) => g.t_move / (g.t_move + g.t_rest),
});

/** Time of the fastest move under limits of speed and acceleration, s: a trapezoid if the speed is reached, else a triangle. */
export const fastestMove = formula({
  key: 'motion.fastestMove',
  symbol: 't_min',
  name: 'Time of the fastest move',
  unit: 's',
  given: { phi: 'rad', omega_lim: 'rad/s', alpha_lim: 'rad/s^2' },
  text: 'phi >= omega_lim^2 / alpha_lim ? phi / omega_lim + omega_lim / alpha_lim : 2 * sqrt(phi / alpha_lim)',
  source: 'Motion handbooks; kinematics',
  of: (g) =>
    g.phi >= g.omega_lim ** 2 / g.alpha_lim
      ? g.phi / g.omega_lim + g.omega_lim / g.alpha_lim
      : 2 * Math.sqrt(g.phi / g.alpha_lim),
});

/** Peak speed of the fastest move, rad/s. */
export const fastestMoveSpeed = formula({
  key: 'motion.fastestMoveSpeed',
  symbol: 'omega_pk',
  name: 'Peak speed of the fastest move',
  unit: 'rad/s',
  given: { phi: 'rad', omega_lim: 'rad/s', alpha_lim: 'rad/s^2' },
  text: 'min(omega_lim, sqrt(alpha_lim * phi))',
  source: 'Motion handbooks; kinematics',
  of: (g) => Math.min(g.omega_lim, Math.sqrt(g.alpha_lim * g.phi)),
});

export interface TorquePhase {
  /** N m, of either sign. */
  readonly torque: number;
  /** s, above 0. */
  readonly duration: number;
}

/** Effective torque of any sequence of phases, N m; 0 for an empty one. Source: definition of the effective value. */
export function effectiveTorque(phases: readonly TorquePhase[]): number {
  let heat = 0;
  let time = 0;
  for (const { torque, duration } of phases) {
    heat += torque ** 2 * duration;
    time += duration;
  }
  return time > 0 ? Math.sqrt(heat / time) : 0;
}
