// Power and efficiency of the motor, and the current at which a power limit bites.
import { formula } from '../formula';

const machine = 'DC machine theory, constant no-load current';

/** Mechanical power at the shaft, W. */
export const shaftPower = formula({
  key: 'motor.shaftPower',
  symbol: 'P_m',
  name: 'Power at the shaft',
  unit: 'W',
  given: { T_m: 'N m', omega: 'rad/s' },
  text: 'T_m * omega',
  source: 'Definition',
  of: (g) => g.T_m * g.omega,
});

/** Electrical power into the motor, W, at a speed and a current: air-gap power and copper loss. */
export const electricalPower = formula({
  key: 'motor.electricalPower',
  symbol: 'P_el',
  name: 'Electrical power into the motor',
  unit: 'W',
  given: { omega: 'rad/s', K_v: 'rad/(s V)', I: 'A', R: 'ohm' },
  text: 'omega / K_v * I + R * I^2',
  source: 'Energy balance',
  of: (g) => (g.omega / g.K_v) * g.I + g.R * g.I ** 2,
});

/** Current at which a limit of electrical power is met at a speed, A: the positive root of R I² + E I = P. */
export const currentAtPower = formula({
  key: 'motor.currentAtPower',
  symbol: 'I_P',
  name: 'Motor current at an electrical power',
  unit: 'A',
  given: { P_el: 'W', omega: 'rad/s', K_v: 'rad/(s V)', R: 'ohm' },
  text: '2 * P_el / (omega / K_v + sqrt((omega / K_v)^2 + 4 * R * P_el))',
  source: 'Energy balance, solved for the current',
  validity: 'Positive power.',
  of: (g) => {
    const emf = g.omega / g.K_v;
    return (2 * g.P_el) / (emf + Math.sqrt(emf ** 2 + 4 * g.R * g.P_el));
  },
});

/** Efficiency at a voltage, a current and a speed: shaft power over electrical power. */
export const efficiency = formula({
  key: 'motor.efficiency',
  symbol: 'eta',
  name: 'Efficiency of the motor',
  unit: '1',
  given: { T_m: 'N m', omega: 'rad/s', U: 'V', I: 'A' },
  text: 'T_m * omega / (U * I)',
  source: 'Definition',
  of: (g) => (g.T_m * g.omega) / (g.U * g.I),
});

/** Current of highest efficiency at full voltage, A. */
export const bestCurrent = formula({
  key: 'motor.bestCurrent',
  symbol: 'I_opt',
  name: 'Current of highest efficiency',
  unit: 'A',
  given: { I_0: 'A', U: 'V', R: 'ohm' },
  text: 'sqrt(I_0 * U / R)',
  source: machine,
  of: (g) => Math.sqrt((g.I_0 * g.U) / g.R),
});

/** Highest efficiency at full voltage. */
export const bestEfficiency = formula({
  key: 'motor.bestEfficiency',
  symbol: 'eta_max',
  name: 'Highest efficiency',
  unit: '1',
  given: { I_0: 'A', U: 'V', R: 'ohm' },
  text: '(1 - sqrt(I_0 * R / U))^2',
  source: machine,
  validity: 'I_0 below the stall current U/R.',
  of: (g) => (1 - Math.sqrt((g.I_0 * g.R) / g.U)) ** 2,
});

/** Current of greatest shaft power at full voltage, A: the motor turns at half its no-load speed and is badly heated. */
export const greatestPowerCurrent = formula({
  key: 'motor.greatestPowerCurrent',
  symbol: 'I_Pmax',
  name: 'Current of greatest shaft power',
  unit: 'A',
  given: { U: 'V', R: 'ohm', I_0: 'A' },
  text: '(U / R + I_0) / 2',
  source: machine,
  of: (g) => (g.U / g.R + g.I_0) / 2,
});

/** Torque that a power limit leaves at a speed, N m. */
export const torqueAtPower = formula({
  key: 'motor.torqueAtPower',
  symbol: 'T_P',
  name: 'Torque at a power limit',
  unit: 'N m',
  given: { P_m: 'W', omega: 'rad/s' },
  text: 'P_m / omega',
  source: 'Definition',
  of: (g) => g.P_m / g.omega,
});
