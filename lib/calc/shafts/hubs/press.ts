// A press fit over the years: what warmth takes off the interference, what creep leaves of the pressure.
import { formula } from '../../formula';

/** Interference at a temperature, m: a hub that expands more than its shaft loses it. None is left below 0. */
export const warmInterference = formula({
  key: 'shafts.warmInterference',
  symbol: 'delta_T',
  name: 'Interference when warm',
  unit: 'm',
  given: { delta: 'm', alpha_o: '1/K', alpha_i: '1/K', d: 'm', T_2: 'K', T_1: 'K' },
  text: 'max(delta - (alpha_o - alpha_i) * d * (T_2 - T_1), 0 * delta)',
  source: 'Free expansion of hub (o) and shaft (i) from the temperature of pressing',
  domain: {
    delta: [1e-5, 1e-4],
    alpha_o: [2e-5, 1.2e-4],
    alpha_i: [1e-5, 2e-5],
    d: [3e-3, 3e-2],
    T_2: [263, 353],
    T_1: [288, 300],
  },
  of: (g) => Math.max(g.delta - (g.alpha_o - g.alpha_i) * g.d * (g.T_2 - g.T_1), 0),
});

/** Pressure of a fit that creep leaves, Pa; s_c the share. */
export const relaxedPressure = formula({
  key: 'shafts.relaxedPressure',
  symbol: 'p_r',
  name: 'Pressure of a fit after creep',
  unit: 'Pa',
  given: { s_c: '1', p_f: 'Pa' },
  text: 's_c * p_f',
  source:
    'Definition; the share is taken from the material’s 1000 h creep fraction (judgement: stress relaxes about as far as strength sinks)',
  domain: { s_c: [0, 1] },
  of: (g) => g.s_c * g.p_f,
});
