// The motor as two warm lumps: the winding inside the case, the case in the air. Rises are against ambient, in K.
import { formula } from '../formula';

const lumps = 'Two thermal nodes (winding and case), derived';

/** Steady rise of the winding with constant loss in it, K. */
export const windingRise = formula({
  key: 'thermal.windingRise',
  symbol: 'dtheta_w',
  name: 'Steady rise of the winding',
  unit: 'K',
  given: { P: 'W', R_wc: 'K/W', R_ca: 'K/W' },
  text: 'P * (R_wc + R_ca)',
  source: lumps,
  of: (g) => g.P * (g.R_wc + g.R_ca),
});

/** Steady rise of the case, K. */
export const caseRise = formula({
  key: 'thermal.caseRise',
  symbol: 'dtheta_c',
  name: 'Steady rise of the case',
  unit: 'K',
  given: { P: 'W', R_ca: 'K/W' },
  text: 'P * R_ca',
  source: lumps,
  of: (g) => g.P * g.R_ca,
});

/** Rise of the winding with warm copper and a constant loss P_c beside it, steady, K. */
export const windingRiseWarm = formula({
  key: 'thermal.windingRiseWarm',
  symbol: 'dtheta_w',
  name: 'Steady rise of the winding with warm copper',
  unit: 'K',
  given: { P_0: 'W', R_wc: 'K/W', R_ca: 'K/W', alpha: '1/K', P_c: 'W' },
  text: '(P_0 * (R_wc + R_ca) + P_c * R_ca) / (1 - alpha * P_0 * (R_wc + R_ca))',
  source: lumps,
  validity: 'alpha·P_0·(R_wc + R_ca) below 1. P_c (drag and iron) is taken to arise in the case.',
  domain: { P_0: [1, 25], R_wc: [0.2, 2], R_ca: [0.5, 5], alpha: [0.0035, 0.0043] },
  of: (g) => {
    const whole = g.R_wc + g.R_ca;
    return (g.P_0 * whole + g.P_c * g.R_ca) / (1 - g.alpha * g.P_0 * whole);
  },
});

/** Decay of the slow mode with constant loss, 1/s (the smaller eigenvalue, taken positive). */
export const slowRate = formula({
  key: 'thermal.slowRate',
  symbol: 'r_slow',
  name: 'Slow rate of the two lumps',
  unit: '1/s',
  given: { R_wc: 'K/W', C_w: 'J/K', R_ca: 'K/W', C_c: 'J/K' },
  text: '((1/(R_wc*C_w) + 1/(R_wc*C_c) + 1/(R_ca*C_c)) - sqrt((1/(R_wc*C_w) + 1/(R_wc*C_c) + 1/(R_ca*C_c))^2 - 4/(R_wc*C_w*R_ca*C_c))) / 2',
  source: lumps,
  of: (g) => {
    const a = trace(g.R_wc, g.C_w, g.R_ca, g.C_c);
    return (a - Math.sqrt(a ** 2 - 4 / (g.R_wc * g.C_w * g.R_ca * g.C_c))) / 2;
  },
});

/** Decay of the fast mode with constant loss, 1/s. */
export const fastRate = formula({
  key: 'thermal.fastRate',
  symbol: 'r_fast',
  name: 'Fast rate of the two lumps',
  unit: '1/s',
  given: { R_wc: 'K/W', C_w: 'J/K', R_ca: 'K/W', C_c: 'J/K' },
  text: '((1/(R_wc*C_w) + 1/(R_wc*C_c) + 1/(R_ca*C_c)) + sqrt((1/(R_wc*C_w) + 1/(R_wc*C_c) + 1/(R_ca*C_c))^2 - 4/(R_wc*C_w*R_ca*C_c))) / 2',
  source: lumps,
  of: (g) => {
    const a = trace(g.R_wc, g.C_w, g.R_ca, g.C_c);
    return (a + Math.sqrt(a ** 2 - 4 / (g.R_wc * g.C_w * g.R_ca * g.C_c))) / 2;
  },
});

/** Rise of the winding after a time with constant loss in it, from cold, K; rates from `slowRate` and `fastRate`. */
export const windingRiseAt = formula({
  key: 'thermal.windingRiseAt',
  symbol: 'dtheta_w',
  name: 'Rise of the winding after a time',
  unit: 'K',
  given: { P: 'W', R_wc: 'K/W', R_ca: 'K/W', C_w: 'J/K', r_slow: '1/s', r_fast: '1/s', t: 's' },
  text: 'P * ((R_wc + R_ca) + (1/C_w - r_fast*(R_wc + R_ca)) / (r_fast - r_slow) * exp(-r_slow*t) - (1/C_w - r_slow*(R_wc + R_ca)) / (r_fast - r_slow) * exp(-r_fast*t))',
  source: lumps,
  validity: 'Constant loss, both lumps at ambient at the start.',
  domain: { r_slow: [0.001, 0.01], r_fast: [0.05, 1] },
  of: (g) => {
    const whole = g.R_wc + g.R_ca;
    const span = g.r_fast - g.r_slow;
    const slow = (1 / g.C_w - g.r_fast * whole) / span;
    const fast = (1 / g.C_w - g.r_slow * whole) / span;
    return g.P * (whole + slow * Math.exp(-g.r_slow * g.t) - fast * Math.exp(-g.r_fast * g.t));
  },
});

function trace(rwc: number, cw: number, rca: number, cc: number): number {
  return 1 / (rwc * cw) + 1 / (rwc * cc) + 1 / (rca * cc);
}
