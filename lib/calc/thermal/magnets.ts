// How warm the magnets get when weaker magnets ask for more current and warmer copper for more loss.
import { formula } from '../formula';

/** Growth of copper loss per kelvin above ambient, 1/K. theta_0 as in `motor.resistanceAt`. */
export const copperGrowth = formula({
  key: 'thermal.copperGrowth',
  symbol: 'alpha',
  name: 'Growth of copper loss, referred to ambient',
  unit: '1/K',
  given: { theta_amb: 'K', theta_0: 'K' },
  text: '1 / (theta_amb - theta_0)',
  source: 'Straight line of resistance over temperature (IEC 60028, from memory)',
  domain: { theta_amb: [260, 320], theta_0: [38, 39] },
  of: (g) => 1 / (g.theta_amb - g.theta_0),
});

/** Share of its steady rise that the case has made after a time. */
export const caseShare = formula({
  key: 'thermal.caseShare',
  symbol: 's_c',
  name: 'Share of the steady rise of the case',
  unit: '1',
  given: { t: 's', R_ca: 'K/W', C_c: 'J/K' },
  text: '1 - exp(-t / (R_ca * C_c))',
  source: 'One thermal node (first-order), derived',
  of: (g) => -Math.expm1(-g.t / (g.R_ca * g.C_c)),
});

/** Mean of the drag's loss over moves and rests, W: in motion never above that at the move's peak speed. */
export const meanDragLoss = formula({
  key: 'thermal.meanDragLoss',
  symbol: 'P_c',
  name: 'Mean loss by drag over moves and rests',
  unit: 'W',
  given: { P_fe: 'W', P_f: 'W', t_move: 's', t_rest: 's' },
  text: '(P_fe + P_f) * t_move / (t_move + t_rest)',
  source: 'Mean over the time; an upper bound',
  of: (g) => ((g.P_fe + g.P_f) * g.t_move) / (g.t_move + g.t_rest),
});

/** Copper loss that the case is taken to carry in the end, W: that of the duty, and of the longest hold as far as it lasts. */
export const caseCopperLoss = formula({
  key: 'thermal.caseCopperLoss',
  symbol: 'P_0',
  name: 'Copper loss that warms the case',
  unit: 'W',
  given: { P_duty: 'W', s_c: '1', P_hold: 'W' },
  text: 'P_duty + s_c * P_hold',
  source: 'Superposition: an upper bound',
  of: (g) => g.P_duty + g.s_c * g.P_hold,
});

/**
 * Rise of the case, and with it of the magnets, K, steady: P_0 is the copper loss with copper at ambient and magnets at
 * theta_ref. Torque is what is asked, so the loss grows with the square of the flux that is lost, and with the copper's
 * resistance. Not a number where nothing settles: the motor runs away. Newton's method from cold, from below.
 */
export const magnetRise = formula({
  key: 'thermal.magnetRise',
  symbol: 'dtheta_m',
  name: 'Steady rise of the magnets',
  unit: 'K',
  given: {
    P_0: 'W',
    P_c: 'W',
    R_wc: 'K/W',
    R_ca: 'K/W',
    alpha: '1/K',
    alpha_B: '1/K',
    theta_amb: 'K',
    theta_ref: 'K',
  },
  text: 'dtheta_m / R_ca - P_c - P_0 * (1 + alpha * (dtheta_m + R_wc * (dtheta_m / R_ca - P_c))) / (1 + alpha_B * (theta_amb + dtheta_m - theta_ref))^2',
  residual: { unit: 'W' },
  source: 'Two thermal nodes, steady; torque goes with flux times current. Derived',
  validity: 'Below runaway.',
  domain: {
    P_0: [1, 15],
    P_c: [0.1, 5],
    R_wc: [0.2, 1],
    R_ca: [0.5, 2.5],
    alpha: [0.0035, 0.0043],
    alpha_B: [-0.002, -0.0003],
    theta_amb: [260, 320],
    theta_ref: [293, 298],
  },
  of: (g) => {
    const k = 1 + g.R_wc / g.R_ca;
    let x = 0;
    for (let i = 0; i < 100; i += 1) {
      const flux = 1 + g.alpha_B * (g.theta_amb + x - g.theta_ref);
      if (flux <= 0.1) return Number.NaN;
      const resistance = 1 + g.alpha * (k * x - g.R_wc * g.P_c);
      const value = x / g.R_ca - g.P_c - (g.P_0 * resistance) / flux ** 2;
      const slope = 1 / g.R_ca - (g.P_0 * (g.alpha * k - (2 * g.alpha_B * resistance) / flux)) / flux ** 2;
      if (slope <= 0) return Number.NaN;
      const next = x - value / slope;
      if (Math.abs(next - x) <= 1e-13 * Math.max(1, Math.abs(next))) return next;
      x = next;
    }
    return Number.NaN;
  },
});

/** Temperature of the magnets, K; the winding's limit at most, for there the motor must be switched off. */
export const magnetTemperature = formula({
  key: 'thermal.magnetTemperature',
  symbol: 'theta_m',
  name: 'Temperature of the magnets',
  unit: 'K',
  given: { theta_amb: 'K', dtheta_m: 'K', theta_lim: 'K' },
  text: 'min(theta_amb + dtheta_m, theta_lim)',
  source: 'Magnets as warm as the case; common practice, no source',
  domain: { theta_amb: [260, 320], theta_lim: [350, 450] },
  of: (g) => Math.min(g.theta_amb + g.dtheta_m, g.theta_lim),
});
