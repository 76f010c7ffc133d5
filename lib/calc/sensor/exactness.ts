// How exactly the output is known: every error of the sensor together, at worst and as a likely value.
import { formula } from '../formula';

/** Greatest error, rad: all parts on one side, half the backlash, half a step, three standard deviations of noise. */
export const worstError = formula({
  key: 'sensor.worstError',
  symbol: 'e_max',
  name: 'Worst-case error of the position',
  unit: 'rad',
  given: { e_l: 'rad', j_s: 'rad', q: 'rad', e_noise: 'rad' },
  text: 'e_l + j_s / 2 + q / 2 + 3 * e_noise',
  source: 'Common practice, no source: arithmetic sum of all parts',
  of: (g) => g.e_l + g.j_s / 2 + g.q / 2 + 3 * g.e_noise,
});

/** Likely error, rad: the same parts as the root of the sum of their squares, for they seldom meet on one side. */
export const likelyError = formula({
  key: 'sensor.likelyError',
  symbol: 'e_rss',
  name: 'Likely error of the position',
  unit: 'rad',
  given: { e_l: 'rad', j_s: 'rad', q: 'rad', e_noise: 'rad' },
  text: 'sqrt(e_l^2 + (j_s / 2)^2 + (q / 2)^2 + e_noise^2)',
  source: 'Statistics of independent errors',
  of: (g) => Math.sqrt(g.e_l ** 2 + (g.j_s / 2) ** 2 + (g.q / 2) ** 2 + g.e_noise ** 2),
});
