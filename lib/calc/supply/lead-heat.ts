// How warm a lead gets, for long and in a short circuit, and what current its insulation bears.
import { formula } from '../formula';

const scaled =
  'Heat balance of a lead scaled from a table of currents: the heat given off taken as proportional to the rise, the resistance as of the warm lead';

/**
 * Rise of a lead over the air after long time, K. I_z the current of the table, at which the copper is dtheta_z above the
 * air and has the temperature theta_z. Infinite where the warming copper heats itself without limit.
 */
export const leadRise = formula({
  key: 'supply.leadRise',
  symbol: 'dtheta_l',
  name: 'Rise of a lead in free air',
  unit: 'K',
  given: {
    I_bat: 'A',
    I_z: 'A',
    dtheta_z: 'K',
    alpha_20: '1/K',
    theta_amb: 'K',
    theta_z: 'K',
    theta_20: 'K',
  },
  text: 'dtheta_z * (I_bat / I_z)^2 * (1 + alpha_20 * (theta_amb - theta_20)) / max(0, 1 + alpha_20 * (theta_z - theta_20) - alpha_20 * dtheta_z * (I_bat / I_z)^2)',
  source: scaled,
  validity: 'Alone in free air; bundled or covered leads get hotter.',
  domain: {
    I_bat: [1, 40],
    I_z: [30, 100],
    dtheta_z: [30, 50],
    alpha_20: [0.0038, 0.0041],
    theta_amb: [260, 330],
    theta_z: [340, 345],
    theta_20: [293, 293.3],
  },
  of: (g) => {
    const share = (g.I_bat / g.I_z) ** 2;
    const cold = 1 + g.alpha_20 * (g.theta_amb - g.theta_20);
    const warm = 1 + g.alpha_20 * (g.theta_z - g.theta_20) - g.alpha_20 * g.dtheta_z * share;
    return (g.dtheta_z * share * cold) / Math.max(0, warm);
  },
});

/** Current with which a lead reaches a temperature after long time, A: the other way of `leadRise`. */
export const leadCurrent = formula({
  key: 'supply.leadCurrent',
  symbol: 'I_lim',
  name: 'Current with which a lead reaches a temperature',
  unit: 'A',
  given: {
    I_z: 'A',
    theta_lim: 'K',
    theta_amb: 'K',
    dtheta_z: 'K',
    alpha_20: '1/K',
    theta_z: 'K',
    theta_20: 'K',
  },
  text: 'I_z * sqrt((theta_lim - theta_amb) / dtheta_z * (1 + alpha_20 * (theta_z - theta_20)) / (1 + alpha_20 * (theta_lim - theta_20)))',
  source: scaled,
  validity: 'Alone in free air; theta_lim above theta_amb.',
  domain: {
    theta_lim: [335, 480],
    theta_amb: [260, 330],
    dtheta_z: [30, 50],
    alpha_20: [0.0038, 0.0041],
    theta_z: [340, 345],
    theta_20: [293, 293.3],
  },
  of: (g) =>
    g.I_z *
    Math.sqrt(
      (((g.theta_lim - g.theta_amb) / g.dtheta_z) * (1 + g.alpha_20 * (g.theta_z - g.theta_20))) /
        (1 + g.alpha_20 * (g.theta_lim - g.theta_20)),
    ),
});

/** Temperature of a lead, K. */
export const leadTemperature = formula({
  key: 'supply.leadTemperature',
  symbol: 'theta_l',
  name: 'Temperature of a lead',
  unit: 'K',
  given: { theta_amb: 'K', dtheta_l: 'K' },
  text: 'theta_amb + dtheta_l',
  source: 'Definition',
  domain: { theta_amb: [260, 320] },
  of: (g) => g.theta_amb + g.dtheta_l,
});

/** Time in which a short circuit takes a lead from theta_i to theta_f, s: no heat leaves the copper. */
export const leadWithstand = formula({
  key: 'supply.leadWithstand',
  symbol: 't_w',
  name: 'Time that a lead stands a short circuit',
  unit: 's',
  given: {
    A_w: 'm^2',
    I_sc: 'A',
    c: 'J/(kg K)',
    gamma: 'kg/m^3',
    rho_20: 'ohm m',
    alpha_20: '1/K',
    theta_i: 'K',
    theta_f: 'K',
    theta_20: 'K',
  },
  text: '(A_w / I_sc)^2 * c * gamma / (rho_20 * alpha_20) * log((1 + alpha_20 * (theta_f - theta_20)) / (1 + alpha_20 * (theta_i - theta_20)))',
  source: 'Adiabatic heat balance; the form of IEC 60949 and of k²S² in IEC 60364-4-43',
  validity: 'Up to about 5 s; longer, heat leaves the copper and it stands more.',
  domain: {
    A_w: [1e-7, 1e-5],
    I_sc: [50, 2000],
    c: [380, 390],
    gamma: [8900, 8960],
    rho_20: [1.7e-8, 1.75e-8],
    alpha_20: [0.0038, 0.0041],
    theta_i: [300, 360],
    theta_f: [430, 620],
    theta_20: [293, 293.3],
  },
  of: (g) =>
    (((g.A_w / g.I_sc) ** 2 * g.c * g.gamma) / (g.rho_20 * g.alpha_20)) *
    Math.log((1 + g.alpha_20 * (g.theta_f - g.theta_20)) / (1 + g.alpha_20 * (g.theta_i - g.theta_20))),
});

/** Time in which a current melts a copper wire, s, by Onderdonk: `meltingCurrent` solved for the time. */
export const meltingTime = formula({
  key: 'supply.meltingTime',
  symbol: 't_melt',
  name: 'Time in which a current melts a wire',
  unit: 's',
  given: { A_w: 'm^2', theta_melt: 'K', theta_amb: 'K', I_sc: 'A' },
  text: '(A_w / (5.067075e-10 * I_sc))^2 * log10((theta_melt - theta_amb) / (theta_amb - 39.15) + 1) / 33',
  source: 'Onderdonk; written for circular mils and °C (234 + θ), here in m² and K',
  validity: 'Copper, up to about 10 s; latent heat left out.',
  empirical: true,
  domain: { A_w: [1e-7, 1e-5], theta_melt: [1300, 1360], theta_amb: [250, 330], I_sc: [50, 2000] },
  of: (g) =>
    ((g.A_w / (5.067075e-10 * g.I_sc)) ** 2 *
      Math.log10((g.theta_melt - g.theta_amb) / (g.theta_amb - 39.15) + 1)) /
    33,
});
