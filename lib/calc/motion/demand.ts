// What a move asks of the actuator as a whole.
import { formula } from '../formula';

/** Greatest torque of a move at the output, N m: a load held throughout and all inertia accelerated, the rotor's included. */
export const moveDemand = formula({
  key: 'motion.moveDemand',
  symbol: 'T_need',
  name: 'Greatest torque of a move, rotor included',
  unit: 'N m',
  given: { T_L: 'N m', J_out: 'kg m^2', alpha_out: 'rad/s^2' },
  text: 'T_L + J_out * alpha_out',
  source: 'Newton’s law',
  of: (g) => g.T_L + g.J_out * g.alpha_out,
});

/** Torque of the load that a move is made against or with, N m: what is held, or the arm's weight where that is more. */
export const movedLoad = formula({
  key: 'motion.movedLoad',
  symbol: 'T_L',
  name: 'Load through the move',
  unit: 'N m',
  given: { T_hold: 'N m', T_arm: 'N m' },
  text: 'max(T_hold, T_arm)',
  source: 'Statics; the load is taken to act in full from start to end, on the safe side',
  of: (g) => Math.max(g.T_hold, g.T_arm),
});

/**
 * Load that the motor feels when the load drives the train, N m at the output: friction takes as much of it as it takes
 * while the motor drives; below an efficiency of a half nothing is left and the train holds itself.
 */
export const drivingLoad = formula({
  key: 'motion.drivingLoad',
  symbol: 'T_back',
  name: 'Load that the motor feels when the load drives',
  unit: 'N m',
  given: { T_L: 'N m', eta: '1' },
  text: 'max(0 * T_L, T_L * (2 - 1 / eta))',
  source: 'Energy balance with the same loss both ways',
  domain: { eta: [0.3, 1] },
  of: (g) => Math.max(0, g.T_L * (2 - 1 / g.eta)),
});

/** Mean speed over a move, rad/s. */
export const meanSpeed = formula({
  key: 'motion.meanSpeed',
  symbol: 'omega_mean',
  name: 'Mean speed over the move',
  unit: 'rad/s',
  given: { phi: 'rad', t: 's' },
  text: 'phi / t',
  source: 'Definition',
  of: (g) => g.phi / g.t,
});

/** Greatest torque while accelerating at a steady rate against the load, N m: at the end, where viscous friction is greatest. */
export const rampTorque = formula({
  key: 'motion.rampTorque',
  symbol: 'T_up',
  name: 'Torque at the end of a steady acceleration against the load',
  unit: 'N m',
  given: { T_L: 'N m', T_dry: 'N m', b: 'N m s/rad', omega: 'rad/s', J_out: 'kg m^2', alpha: 'rad/s^2' },
  text: 'T_L + T_dry + b * omega + J_out * alpha',
  source: 'Newton’s law',
  of: (g) => g.T_L + g.T_dry + g.b * g.omega + g.J_out * g.alpha,
});

/** Greatest torque of a cosine move against the load, N m: acceleration and viscous friction are a quarter swing apart. */
export const swingTorque = formula({
  key: 'motion.swingTorque',
  symbol: 'T_up',
  name: 'Greatest torque of a cosine move against the load',
  unit: 'N m',
  given: { T_L: 'N m', T_dry: 'N m', b: 'N m s/rad', omega: 'rad/s', J_out: 'kg m^2', alpha: 'rad/s^2' },
  text: 'T_L + T_dry + sqrt((b * omega)^2 + (J_out * alpha)^2)',
  source: 'Newton’s law; greatest value of a sine and a cosine together',
  of: (g) => g.T_L + g.T_dry + Math.hypot(g.b * g.omega, g.J_out * g.alpha),
});

/** Torque at the peak speed of a move against the load, N m. */
export const runTorque = formula({
  key: 'motion.runTorque',
  symbol: 'T_run',
  name: 'Torque at the peak speed against the load',
  unit: 'N m',
  given: { T_L: 'N m', T_dry: 'N m', b: 'N m s/rad', omega: 'rad/s' },
  text: 'T_L + T_dry + b * omega',
  source: 'Newton’s law',
  of: (g) => g.T_L + g.T_dry + g.b * g.omega,
});

/** Greatest torque that brakes a move made with the load, N m: at its end, where no viscous friction helps; 0 where friction alone does it. */
export const brakeTorque = formula({
  key: 'motion.brakeTorque',
  symbol: 'T_brk',
  name: 'Torque that brakes the move with the load',
  unit: 'N m',
  given: { T_back: 'N m', T_dry: 'N m', J_out: 'kg m^2', alpha: 'rad/s^2' },
  text: 'max(0 * T_back, T_back - T_dry + J_out * alpha)',
  source: 'Newton’s law',
  of: (g) => Math.max(0, g.T_back - g.T_dry + g.J_out * g.alpha),
});

/** Power that may flow back into a supply, W: its voltage times the limit of the current back. */
export const returnedPower = formula({
  key: 'motion.returnedPower',
  symbol: 'P_back',
  name: 'Power that may flow back into the supply',
  unit: 'W',
  given: { U_oc: 'V', I_reg: 'A' },
  text: 'U_oc * I_reg',
  source:
    'Energy balance; the rise of the voltage by the current back and the drive’s own loss left out, on the safe side',
  of: (g) => g.U_oc * g.I_reg,
});

/** The same where a brake resistor stands across the supply, W. */
export const returnedPowerBraked = formula({
  key: 'motion.returnedPowerBraked',
  symbol: 'P_back',
  name: 'Power that supply and brake resistor take',
  unit: 'W',
  given: { U_oc: 'V', I_reg: 'A', R_brk: 'ohm' },
  text: 'U_oc * I_reg + U_oc^2 / R_brk',
  source: 'Energy balance and Ohm’s law; the rise of the voltage left out, on the safe side',
  of: (g) => g.U_oc * g.I_reg + g.U_oc ** 2 / g.R_brk,
});

export const demandFormulas = [
  moveDemand,
  movedLoad,
  drivingLoad,
  meanSpeed,
  rampTorque,
  swingTorque,
  runTorque,
  brakeTorque,
  returnedPower,
  returnedPowerBraked,
] as const;
