// Leads: gauges, resistance, heating and what melts them.
import { formula } from '../formula';

/** Diameter of an American gauge, m; d_36 = 0.127 mm. */
export const gaugeDiameter = formula({
  key: 'supply.gaugeDiameter',
  symbol: 'd_w',
  name: 'Diameter of a wire gauge',
  unit: 'm',
  given: { n_g: '1', d_36: 'm' },
  text: 'd_36 * 92^((36 - n_g) / 39)',
  source: 'ASTM B258',
  domain: { n_g: [-3, 40] },
  of: (g) => g.d_36 * 92 ** ((36 - g.n_g) / 39),
});

/** American gauge of a diameter; d_36 = 0.127 mm. */
export const gaugeOfDiameter = formula({
  key: 'supply.gaugeOfDiameter',
  symbol: 'n_g',
  name: 'Wire gauge of a diameter',
  unit: '1',
  given: { d_w: 'm', d_36: 'm' },
  text: '36 - 39 * log(d_w / d_36) / log(92)',
  source: 'ASTM B258, inverted',
  of: (g) => 36 - (39 * Math.log(g.d_w / g.d_36)) / Math.log(92),
});

/** Copper area of a round wire, m². */
export const wireArea = formula({
  key: 'supply.wireArea',
  symbol: 'A_w',
  name: 'Copper area of a wire',
  unit: 'm^2',
  given: { d_w: 'm' },
  text: 'pi / 4 * d_w^2',
  source: 'Geometry',
  of: (g) => (Math.PI / 4) * g.d_w ** 2,
});

/** Resistance of a pair of leads, there and back, Ω; rho at the wire's temperature, `l` one way. */
export const leadResistance = formula({
  key: 'supply.leadResistance',
  symbol: 'R_lead',
  name: 'Resistance of the leads, both ways',
  unit: 'ohm',
  given: { rho: 'ohm m', l: 'm', A_w: 'm^2' },
  text: '2 * rho * l / A_w',
  source: 'Ohm’s law; copper 1.7241e-8 Ω m at 20 °C (IEC 60028)',
  validity: 'Solid copper; stranded wire has 2 % to 16 % more (IEC 60228 class 5 limits).',
  of: (g) => (2 * g.rho * g.l) / g.A_w,
});

/** Copper area that keeps a pair of leads below a voltage drop, m²: the other way of `leadResistance`. */
export const leadAreaForDrop = formula({
  key: 'supply.leadAreaForDrop',
  symbol: 'A_w',
  name: 'Copper area for a voltage drop',
  unit: 'm^2',
  given: { rho: 'ohm m', l: 'm', I_bat: 'A', U_drop: 'V' },
  text: '2 * rho * l * I_bat / U_drop',
  source: 'Ohm’s law',
  of: (g) => (2 * g.rho * g.l * g.I_bat) / g.U_drop,
});

/** Resistivity of copper at temperature, Ω m; alpha_20 = 0.00393 1/K at theta_20 = 293.15 K. */
export const copperResistivity = formula({
  key: 'supply.copperResistivity',
  symbol: 'rho',
  name: 'Resistivity of copper at temperature',
  unit: 'ohm m',
  given: { rho_20: 'ohm m', alpha_20: '1/K', theta: 'K', theta_20: 'K' },
  text: 'rho_20 * (1 + alpha_20 * (theta - theta_20))',
  source: 'IEC 60028, from memory',
  domain: { alpha_20: [0.0038, 0.0041], theta: [250, 500], theta_20: [293, 293.3] },
  of: (g) => g.rho_20 * (1 + g.alpha_20 * (g.theta - g.theta_20)),
});

/**
 * Current that melts a copper wire in a time, A, by Onderdonk. A_w in m², t in s, temperatures in K.
 * Holds from about 1 ms to 10 s (no heat leaves the wire); latent heat left out.
 */
export const meltingCurrent = formula({
  key: 'supply.meltingCurrent',
  symbol: 'I_melt',
  name: 'Current that melts a wire in a time',
  unit: 'A',
  given: { A_w: 'm^2', theta_melt: 'K', theta_amb: 'K', t: 's' },
  text: 'A_w / 5.067075e-10 * sqrt(log10((theta_melt - theta_amb) / (theta_amb - 39.15) + 1) / (33 * t))',
  source: 'Onderdonk; written for circular mils and °C (234 + θ), here in m² and K',
  validity: 'Copper, t up to about 10 s.',
  empirical: true,
  domain: { A_w: [1e-7, 1e-5], theta_melt: [1300, 1360], theta_amb: [250, 330], t: [0.01, 10] },
  of: (g) =>
    (g.A_w / 5.067075e-10) *
    Math.sqrt(Math.log10((g.theta_melt - g.theta_amb) / (g.theta_amb - 39.15) + 1) / (33 * g.t)),
});

/** Current that melts a copper wire in still air after long time, A, by Preece; d_w in m. */
export const longMeltingCurrent = formula({
  key: 'supply.longMeltingCurrent',
  symbol: 'I_fuse',
  name: 'Current that melts a wire at length',
  unit: 'A',
  given: { d_w: 'm' },
  text: '10244 * (d_w / 0.0254)^1.5',
  source: 'Preece, copper; written for inches',
  validity: 'Bare wire in still air, rough.',
  empirical: true,
  domain: { d_w: [1e-4, 4e-3] },
  of: (g) => 10244 * (g.d_w / 0.0254) ** 1.5,
});

/** Least rating of a fuse that carries a current for long, A; s_f = 0.8 of its rating may flow. */
export const fuseForLoad = formula({
  key: 'supply.fuseForLoad',
  symbol: 'I_f_min',
  name: 'Least fuse for a continuous current',
  unit: 'A',
  given: { I_c: 'A', s_f: '1' },
  text: 'I_c / s_f',
  source:
    'Common practice after electrical codes (continuous load at most 80 % of the fuse); local codes take precedence',
  of: (g) => g.I_c / g.s_f,
});

/** How far a fuse is below the lead it protects, as a factor: at least 1, for the fuse must go before the lead. */
export const fuseMargin = formula({
  key: 'supply.fuseMargin',
  symbol: 'n_f',
  name: 'Lead over fuse',
  unit: '1',
  given: { I_amp: 'A', I_f: 'A' },
  text: 'I_amp / I_f',
  source:
    'Common practice after electrical codes (fuse at most the ampacity of the lead); local codes take precedence',
  of: (g) => g.I_amp / g.I_f,
});
