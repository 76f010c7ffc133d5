// What each limit lets through at one output speed: the steps of the torque–speed envelope.
import { formula } from '../formula';

const balance = 'Linear motor model and energy balance; sinusoidal inductive drop left out';

/** Motor current that full voltage lets through against back-EMF and resistance, A; the battery carries it and sags. */
export const currentAtVoltage = formula({
  key: 'motion.currentAtVoltage',
  symbol: 'I_U',
  name: 'Motor current that the voltage lets through',
  unit: 'A',
  given: { U_oc: 'V', omega: 'rad/s', K_v: 'rad/(s V)', R: 'ohm', R_s: 'ohm' },
  text: 'max(0 * U_oc / R, (U_oc - omega / K_v) / (R + R_s))',
  source: balance,
  domain: { U_oc: [10, 60], omega: [1, 500], K_v: [5, 50], R: [0.01, 0.2], R_s: [0.001, 0.1] },
  of: (g) => Math.max(0, (g.U_oc - g.omega / g.K_v) / (g.R + g.R_s)),
});

/**
 * The same where the drive holds its duty cycle to D_max, A: it then gives the motor that share of the supply’s voltage,
 * and the supply carries that share of the motor’s current.
 */
export const currentAtDuty = formula({
  key: 'motion.currentAtDuty',
  symbol: 'I_U',
  name: 'Motor current that the voltage lets through at the greatest duty cycle',
  unit: 'A',
  given: { D_max: '1', U_oc: 'V', omega: 'rad/s', K_v: 'rad/(s V)', R: 'ohm', R_s: 'ohm' },
  text: 'max(0 * U_oc / R, (D_max * U_oc - omega / K_v) / (R + D_max^2 * R_s))',
  source: 'Averaged converter: voltage and current in the ratio of the duty cycle; linear motor model',
  domain: {
    D_max: [0.3, 1],
    U_oc: [10, 60],
    omega: [1, 500],
    K_v: [5, 50],
    R: [0.01, 0.2],
    R_s: [0.001, 0.1],
  },
  of: (g) => Math.max(0, (g.D_max * g.U_oc - g.omega / g.K_v) / (g.R + g.D_max ** 2 * g.R_s)),
});

/** Torque up to the greatest speed of the motor, N m; none above it, where the motor must not be run. */
export const torqueWithinSpeed = formula({
  key: 'motion.torqueWithinSpeed',
  symbol: 'T_in',
  name: 'Torque up to the greatest speed of the motor',
  unit: 'N m',
  given: { T: 'N m', omega: 'rad/s', omega_max: 'rad/s' },
  text: 'omega <= omega_max ? T : 0 * T',
  source: 'Definition of the maker’s greatest speed',
  of: (g) => (g.omega <= g.omega_max ? g.T : 0),
});

/** Battery current that brings the most power within a limit, A: beyond half the short-circuit current it brings less. */
export const drawnAtMost = formula({
  key: 'motion.drawnAtMost',
  symbol: 'I_s',
  name: 'Battery current that brings the most power',
  unit: 'A',
  given: { I_bat_lim: 'A', U_oc: 'V', R_s: 'ohm' },
  text: 'min(I_bat_lim, U_oc / (2 * R_s))',
  source: 'Greatest power of a source with resistance',
  domain: { I_bat_lim: [1, 100], U_oc: [10, 60], R_s: [0.01, 1] },
  of: (g) => Math.min(g.I_bat_lim, g.U_oc / (2 * g.R_s)),
});

/** Power that reaches the drive at a battery current, W: what the pack gives less what its resistance takes. */
export const drawnPower = formula({
  key: 'motion.drawnPower',
  symbol: 'P_s',
  name: 'Power that reaches the drive',
  unit: 'W',
  given: { I_s: 'A', U_oc: 'V', R_s: 'ohm' },
  text: 'I_s * (U_oc - I_s * R_s)',
  source: balance,
  domain: { I_s: [1, 50], U_oc: [20, 60], R_s: [0.001, 0.1] },
  of: (g) => g.I_s * (g.U_oc - g.I_s * g.R_s),
});

/** Electrical power into the motor, W: what the drive passes on. */
export const passedOn = formula({
  key: 'motion.passedOn',
  symbol: 'P_el',
  name: 'Electrical power that the drive passes on',
  unit: 'W',
  given: { P_s: 'W', eta_d: '1' },
  text: 'P_s * eta_d',
  source: 'Definition of efficiency',
  domain: { eta_d: [0.5, 1] },
  of: (g) => g.P_s * g.eta_d,
});

/** Torque at the output that a motor current leaves, N m, never below 0: drag and friction of the train are taken off. */
export const torqueLeft = formula({
  key: 'motion.torqueLeft',
  symbol: 'T_left',
  name: 'Torque at the output that a motor current leaves',
  unit: 'N m',
  given: { I: 'A', I_0: 'A', K_v: 'rad/(s V)', i: '1', eta: '1' },
  text: 'max(0 * I, I - I_0) / K_v * i * eta',
  source: balance,
  domain: { I: [0, 80], I_0: [0, 5], K_v: [5, 50], i: [1, 200], eta: [0.3, 1] },
  of: (g) => (Math.max(0, g.I - g.I_0) / g.K_v) * g.i * g.eta,
});

export const limitFormulas = [
  currentAtVoltage,
  currentAtDuty,
  torqueWithinSpeed,
  drawnAtMost,
  drawnPower,
  passedOn,
  torqueLeft,
] as const;
