// The phases of a move, accelerate, cruise and brake, and what the motor gives and takes at a point of work.
import { type AnyFormula, formula } from '../formula';

/** Time in which a move speeds up, or slows down, s: a third of a trapezoid, half of a triangle or a cosine. */
const rampTime = formula({
  key: 'motor.rampTime',
  symbol: 't_a',
  name: 'Time of a ramp of speed',
  unit: 's',
  given: { s_a: '1', t: 's' },
  text: 's_a * t',
  source: 'Kinematics',
  of: (g) => g.s_a * g.t,
});

/** Time at constant speed, s. */
const cruiseTime = formula({
  key: 'motor.cruiseTime',
  symbol: 't_c',
  name: 'Time at constant speed',
  unit: 's',
  given: { t: 's', t_a: 's' },
  text: 't - 2 * t_a',
  source: 'Kinematics',
  of: (g) => g.t - 2 * g.t_a,
});

/** Effective torque over a ramp of speed, N m at the output; sign +1 speeding up, −1 slowing down, against a constant load. */
const rampTorque = formula({
  key: 'motor.rampTorque',
  symbol: 'T_ramp',
  name: 'Effective torque over a ramp of speed',
  unit: 'N m',
  given: {
    T_L: 'N m',
    sign: '1',
    J_out: 'kg m^2',
    omega_pk: 'rad/s',
    t_a: 's',
    alpha_rms: 'rad/s^2',
    t: 's',
  },
  text: 'sqrt(T_L^2 + sign * 2 * T_L * J_out * omega_pk / t_a + (J_out * alpha_rms)^2 * t / (2 * t_a))',
  source: 'Definition of the effective value; both ramps of a move are alike',
  domain: { sign: [1, 1], t: [20, 30] },
  of: (g) =>
    Math.sqrt(
      g.T_L ** 2 +
        (g.sign * 2 * g.T_L * g.J_out * g.omega_pk) / g.t_a +
        ((g.J_out * g.alpha_rms) ** 2 * g.t) / (2 * g.t_a),
    ),
});

/** Torque of load and acceleration at the output, N m; s is the acceleration over its peak, negative slowing down. */
const phaseTorque = formula({
  key: 'motor.phaseTorque',
  symbol: 'T_out',
  name: 'Torque at the output in a phase of the move',
  unit: 'N m',
  given: { T_L: 'N m', s: '1', J_out: 'kg m^2', alpha_out: 'rad/s^2' },
  text: 'T_L + s * J_out * alpha_out',
  source: 'Newton’s law',
  of: (g) => g.T_L + g.s * g.J_out * g.alpha_out,
});

/** Torque at the motor for a torque at the output of either sign, N m: friction of the train loads the driver, whoever it is. */
const torqueThroughTrain = formula({
  key: 'motor.torqueThroughTrain',
  symbol: 'T_m',
  name: 'Torque at the motor, driving or braking',
  unit: 'N m',
  given: { T_out: 'N m', N: '1', eta: '1' },
  text: 'T_out >= 0 * T_out ? T_out / (N * eta) : T_out * eta / N',
  source: 'Energy balance',
  domain: { T_out: [-10, 10], eta: [0.3, 1] },
  of: (g) => (g.T_out >= 0 ? g.T_out / (g.N * g.eta) : (g.T_out * g.eta) / g.N),
});

/** Speed of the motor where a ramp asks for the most power, rad/s: s_omega is the speed there over its peak. */
const speedInRamp = formula({
  key: 'motor.speedInRamp',
  symbol: 'omega_a',
  name: 'Speed of the motor in a ramp',
  unit: 'rad/s',
  given: { s_omega: '1', N: '1', omega_pk: 'rad/s' },
  text: 's_omega * N * omega_pk',
  source: 'Kinematics',
  of: (g) => g.s_omega * g.N * g.omega_pk,
});

/** What a motor loses, W: what goes in less what comes out. Both are negative where it gives back. */
const pointLoss = formula({
  key: 'motor.pointLoss',
  symbol: 'P_V',
  name: 'Loss of the motor',
  unit: 'W',
  given: { P_el: 'W', P_m: 'W' },
  text: 'P_el - P_m',
  source: 'Energy balance',
  of: (g) => g.P_el - g.P_m,
});

/** Share of the electrical power that comes out at the shaft. */
const pointEfficiency = formula({
  key: 'motor.pointEfficiency',
  symbol: 'eta_m',
  name: 'Efficiency of the motor at a point of work',
  unit: '1',
  given: { P_m: 'W', P_el: 'W' },
  text: 'P_m / P_el',
  source: 'Definition',
  validity: 'A motor that drives: both powers positive.',
  of: (g) => g.P_m / g.P_el,
});

/** The greater of the current of the longest hold and the effective one of the duty, A: what flows for long. */
const lastingCurrent = formula({
  key: 'motor.lastingCurrent',
  symbol: 'I_long',
  name: 'Current that flows for long',
  unit: 'A',
  given: { I_h: 'A', I_rms: 'A' },
  text: 'max(I_h, I_rms)',
  source: 'Definition',
  of: (g) => Math.max(g.I_h, g.I_rms),
});

/** Part of a rest that is held, s: the longest hold at most. */
const heldRest = formula({
  key: 'motor.heldRest',
  symbol: 't_held',
  name: 'Part of a rest that is held',
  unit: 's',
  given: { t_hold: 's', t_rest: 's' },
  text: 'min(t_hold, t_rest)',
  source: 'Definition',
  of: (g) => Math.min(g.t_hold, g.t_rest),
});

/** Part of a rest without current, s. */
const freeRest = formula({
  key: 'motor.freeRest',
  symbol: 't_free',
  name: 'Part of a rest without current',
  unit: 's',
  given: { t_rest: 's', t_held: 's' },
  text: 't_rest - t_held',
  source: 'Definition',
  of: (g) => g.t_rest - g.t_held,
});

export const phases = {
  rampTime,
  cruiseTime,
  heldRest,
  freeRest,
  rampTorque,
  phaseTorque,
  torqueThroughTrain,
  speedInRamp,
  pointLoss,
  pointEfficiency,
  lastingCurrent,
};

export const phaseFormulas: readonly AnyFormula[] = Object.values(phases);
