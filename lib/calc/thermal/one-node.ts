// The motor as one warm lump: rise, time to a limit, continuous current. A rise is against ambient, in K.
import { formula } from '../formula';

const lump = 'One thermal node (first-order), derived';

/** Rise of temperature after long time with constant loss, K. */
export const steadyRise = formula({
  key: 'thermal.steadyRise',
  symbol: 'dtheta_ss',
  name: 'Steady rise of temperature',
  unit: 'K',
  given: { P: 'W', R_th: 'K/W' },
  text: 'P * R_th',
  source: lump,
  of: (g) => g.P * g.R_th,
});

/** Thermal time constant, s. */
export const timeConstant = formula({
  key: 'thermal.timeConstant',
  symbol: 'tau_th',
  name: 'Thermal time constant',
  unit: 's',
  given: { R_th: 'K/W', C_th: 'J/K' },
  text: 'R_th * C_th',
  source: lump,
  of: (g) => g.R_th * g.C_th,
});

/** Rise after a time with constant loss, from cold, K. */
export const riseAt = formula({
  key: 'thermal.riseAt',
  symbol: 'dtheta',
  name: 'Rise of temperature after a time',
  unit: 'K',
  given: { P: 'W', R_th: 'K/W', t: 's', C_th: 'J/K' },
  text: 'P * R_th * (1 - exp(-t / (R_th * C_th)))',
  source: lump,
  of: (g) => g.P * g.R_th * -Math.expm1(-g.t / (g.R_th * g.C_th)),
});

/** Time until a rise is reached with constant loss, from cold, s; never (not a number) when the steady rise is lower. */
export const timeToRise = formula({
  key: 'thermal.timeToRise',
  symbol: 't_lim',
  name: 'Time to a rise of temperature',
  unit: 's',
  given: { R_th: 'K/W', C_th: 'J/K', dtheta: 'K', P: 'W' },
  text: '-R_th * C_th * log(1 - dtheta / (P * R_th))',
  source: lump,
  validity: 'Rise below P·R_th.',
  domain: { R_th: [1, 5], P: [50, 200], dtheta: [5, 45] },
  of: (g) => -g.R_th * g.C_th * Math.log1p(-g.dtheta / (g.P * g.R_th)),
});

/**
 * Share by which warm copper feeds back on itself: below 1 the temperature settles, from 1 on it runs away.
 * P_0 is the copper loss at ambient; alpha the temperature coefficient of resistance referred to ambient.
 */
export const runawayShare = formula({
  key: 'thermal.runawayShare',
  symbol: 'k_run',
  name: 'Feedback of warm copper',
  unit: '1',
  given: { alpha: '1/K', P_0: 'W', R_th: 'K/W' },
  text: 'alpha * P_0 * R_th',
  source: lump,
  of: (g) => g.alpha * g.P_0 * g.R_th,
});

/** Steady rise with copper that grows more resistive as it warms, K. */
export const steadyRiseWarm = formula({
  key: 'thermal.steadyRiseWarm',
  symbol: 'dtheta_ss',
  name: 'Steady rise with warm copper',
  unit: 'K',
  given: { P_0: 'W', R_th: 'K/W', alpha: '1/K' },
  text: 'P_0 * R_th / (1 - alpha * P_0 * R_th)',
  source: lump,
  validity: 'alpha·P_0·R_th below 1; from there on the temperature runs away.',
  domain: { alpha: [0.0035, 0.0043], P_0: [1, 30], R_th: [0.5, 6] },
  of: (g) => (g.P_0 * g.R_th) / (1 - g.alpha * g.P_0 * g.R_th),
});

/** Rise after a time with warm copper, from cold, K; holds on both sides of runaway. */
export const riseAtWarm = formula({
  key: 'thermal.riseAtWarm',
  symbol: 'dtheta',
  name: 'Rise after a time with warm copper',
  unit: 'K',
  given: { P_0: 'W', R_th: 'K/W', alpha: '1/K', t: 's', C_th: 'J/K' },
  text: 'P_0 / (1 / R_th - alpha * P_0) * (1 - exp(-t / C_th * (1 / R_th - alpha * P_0)))',
  source: lump,
  validity: 'alpha·P_0·R_th other than exactly 1.',
  domain: { alpha: [0.0035, 0.0043], P_0: [1, 30], R_th: [0.5, 6] },
  of: (g) => {
    const k = 1 / g.R_th - g.alpha * g.P_0;
    return (g.P_0 / k) * -Math.expm1((-g.t / g.C_th) * k);
  },
});

/** Time until a rise is reached with warm copper, from cold, s; not a number when it is never reached. */
export const timeToRiseWarm = formula({
  key: 'thermal.timeToRiseWarm',
  symbol: 't_lim',
  name: 'Time to a rise with warm copper',
  unit: 's',
  given: { C_th: 'J/K', R_th: 'K/W', alpha: '1/K', P_0: 'W', dtheta: 'K' },
  text: '-C_th / (1 / R_th - alpha * P_0) * log(1 - dtheta * (1 / R_th - alpha * P_0) / P_0)',
  source: lump,
  validity: 'alpha·P_0·R_th other than exactly 1; rise below the steady one.',
  domain: { alpha: [0.0035, 0.0043], P_0: [60, 200], R_th: [1, 5], dtheta: [5, 50] },
  of: (g) => {
    const k = 1 / g.R_th - g.alpha * g.P_0;
    return (-g.C_th / k) * Math.log1p((-g.dtheta * k) / g.P_0);
  },
});

/** Current that a motor stands for ever, A: its copper loss, hot, just warms the winding to the limit. Copper loss alone. */
export const continuousCurrent = formula({
  key: 'thermal.continuousCurrent',
  symbol: 'I_cont',
  name: 'Continuous current',
  unit: 'A',
  given: { theta_max: 'K', theta_amb: 'K', R_hot: 'ohm', R_th: 'K/W' },
  text: 'sqrt((theta_max - theta_amb) / (R_hot * R_th))',
  source: 'One thermal node; a published sheet lies 7 % lower, for drag is left out',
  validity: 'theta_max above theta_amb.',
  domain: { theta_max: [350, 450], theta_amb: [260, 320] },
  of: (g) => Math.sqrt((g.theta_max - g.theta_amb) / (g.R_hot * g.R_th)),
});

/** Rate at which copper warms while no heat leaves it, K/s: about J²/200 with J in A/mm². */
export const adiabaticRate = formula({
  key: 'thermal.adiabaticRate',
  symbol: 'theta_dot',
  name: 'Rate of warming without heat flow',
  unit: 'K/s',
  given: { J_c: 'A/m^2', rho: 'ohm m', c_p: 'J/(kg K)', gamma: 'kg/m^3' },
  text: 'J_c^2 * rho / (c_p * gamma)',
  source: 'Energy balance',
  of: (g) => (g.J_c ** 2 * g.rho) / (g.c_p * g.gamma),
});

/** Life of insulation over its rated life at a temperature above the class limit; halves every dtheta_half = 10 K. */
export const insulationLife = formula({
  key: 'thermal.insulationLife',
  symbol: 's_life',
  name: 'Share of insulation life',
  unit: '1',
  given: { dtheta: 'K', dtheta_half: 'K' },
  text: '2^(-dtheta / dtheta_half)',
  source: 'Common practice, no source: life halves per 10 K',
  of: (g) => 2 ** (-g.dtheta / g.dtheta_half),
});
