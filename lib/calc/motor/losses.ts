// Losses of the motor, in motion and at standstill.
import { formula } from '../formula';

const dq = 'Amplitude-invariant dq convention (Krause; Mevey), from memory';

/**
 * Winding resistance at another temperature, Ω. theta_0 is the temperature at which the straight line of resistance
 * meets zero: 38.70 K for alpha_20 = 0.00393 1/K (IEC 60028), 38.15 K in the 235 °C form of IEC 60034-1.
 */
export const resistanceAt = formula({
  key: 'motor.resistanceAt',
  symbol: 'R_hot',
  name: 'Winding resistance at temperature',
  unit: 'ohm',
  given: { R_ref: 'ohm', theta: 'K', theta_ref: 'K', theta_0: 'K' },
  text: 'R_ref * (theta - theta_0) / (theta_ref - theta_0)',
  source: 'IEC 60028 and IEC 60034-1 (235 °C form), from memory',
  validity: 'Copper, about −50 °C to 250 °C.',
  domain: { theta: [230, 500], theta_ref: [285, 303], theta_0: [38, 39] },
  of: (g) => (g.R_ref * (g.theta - g.theta_0)) / (g.theta_ref - g.theta_0),
});

/** Copper loss of an equivalent direct current, W; R line to line at its temperature. */
export const copperLoss = formula({
  key: 'motor.copperLoss',
  symbol: 'P_cu',
  name: 'Copper loss',
  unit: 'W',
  given: { R: 'ohm', I: 'A' },
  text: 'R * I^2',
  source: 'Joule’s law',
  of: (g) => g.R * g.I ** 2,
});

/** Copper loss of a peak phase current, W; R line to line. Equal to `copperLoss` of the equivalent direct current. */
export const copperLossPhasePeak = formula({
  key: 'motor.copperLossPhasePeak',
  symbol: 'P_cu',
  name: 'Copper loss from peak phase current',
  unit: 'W',
  given: { R: 'ohm', i_q: 'A' },
  text: '0.75 * R * i_q^2',
  source: dq,
  of: (g) => 0.75 * g.R * g.i_q ** 2,
});

/** Loss in one phase at a standstill position, over the mean of the three: theta_e is its electrical angle. */
export const phaseLossShare = formula({
  key: 'motor.phaseLossShare',
  symbol: 's_ph',
  name: 'Loss of one phase over the mean at standstill',
  unit: '1',
  given: { theta_e: 'rad' },
  text: '2 * cos(theta_e)^2',
  source: 'Derived: sinusoidal phase currents that stand still with the rotor',
  of: (g) => 2 * Math.cos(g.theta_e) ** 2,
});

/**
 * Loss in the worst phase when the motor holds still, W: up to twice the mean of a turning motor, so two thirds of the
 * whole copper loss sit in one phase. R line to line, I equivalent direct current.
 */
export const worstPhaseLoss = formula({
  key: 'motor.worstPhaseLoss',
  symbol: 'P_ph',
  name: 'Loss in the worst phase at standstill',
  unit: 'W',
  given: { R: 'ohm', I: 'A' },
  text: '2 / 3 * R * I^2',
  source: 'Derived: sinusoidal phase currents that stand still with the rotor',
  of: (g) => (2 / 3) * g.R * g.I ** 2,
});

/** Whole loss by which to heat a one- or two-node model, so that it stands for the worst phase at standstill, W. */
export const standstillLoss = formula({
  key: 'motor.standstillLoss',
  symbol: 'P_hold',
  name: 'Holding loss, worst phase taken for all',
  unit: 'W',
  given: { R: 'ohm', I: 'A' },
  text: '2 * R * I^2',
  source: 'Derived: sinusoidal phase currents; heat exchange between phases left out, so on the safe side',
  validity: 'Holds longer than about a second; upper bound.',
  of: (g) => 2 * g.R * g.I ** 2,
});

/** Loss by drag at a speed, W. */
export const dragLoss = formula({
  key: 'motor.dragLoss',
  symbol: 'P_d',
  name: 'Loss by drag',
  unit: 'W',
  given: { T_d: 'N m', omega: 'rad/s' },
  text: 'T_d * omega',
  source: 'Definition',
  of: (g) => g.T_d * g.omega,
});
