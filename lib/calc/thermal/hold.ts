// The winding while the motor holds still: the worst phase warms against the case, the case against the air.
import { formula } from '../formula';

const hold = 'Two first-order rises added, derived: an upper bound of two coupled thermal nodes';

/**
 * Rise of the worst phase during a hold of t s, K, above where it began. P_ph is the loss by which to warm the winding
 * against the case (worst phase taken for all), P the whole copper loss, which warms the case.
 */
export const holdRise = formula({
  key: 'thermal.holdRise',
  symbol: 'dtheta_h',
  name: 'Rise of the winding during a hold',
  unit: 'K',
  given: { P_ph: 'W', R_wc: 'K/W', C_w: 'J/K', P: 'W', R_ca: 'K/W', C_c: 'J/K', t: 's' },
  text: 'P_ph * R_wc * (1 - exp(-t / (R_wc * C_w))) + P * R_ca * (1 - exp(-t / (R_ca * C_c)))',
  source: hold,
  of: (g) =>
    g.P_ph * g.R_wc * -Math.expm1(-g.t / (g.R_wc * g.C_w)) +
    g.P * g.R_ca * -Math.expm1(-g.t / (g.R_ca * g.C_c)),
});

/** Rise that a hold may add, K: from where the duty leaves the winding up to its limit; 0 when nothing is left. */
export const riseLeft = formula({
  key: 'thermal.riseLeft',
  symbol: 'dtheta_left',
  name: 'Rise left to the winding',
  unit: 'K',
  given: { theta_lim: 'K', theta_amb: 'K', dtheta_0: 'K' },
  text: 'max(theta_lim - theta_amb - dtheta_0, 0 * dtheta_0)',
  source: 'Definition',
  domain: { theta_lim: [350, 450], theta_amb: [260, 320] },
  of: (g) => Math.max(g.theta_lim - g.theta_amb - g.dtheta_0, 0),
});

/** Temperature of the winding, K: ambient, what the duty has warmed it by, and what the hold adds. */
export const windingTemperature = formula({
  key: 'thermal.windingTemperature',
  symbol: 'theta_w',
  name: 'Temperature of the winding',
  unit: 'K',
  given: { theta_amb: 'K', dtheta_0: 'K', dtheta_h: 'K' },
  text: 'theta_amb + dtheta_0 + dtheta_h',
  source: 'Definition',
  domain: { theta_amb: [260, 320] },
  of: (g) => g.theta_amb + g.dtheta_0 + g.dtheta_h,
});
