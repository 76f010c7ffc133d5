// The budget of the output's exactness: every share at the output, together at worst, likely and as a measured uncertainty.
import { formula } from '../formula';

const shares = {
  e_cmd: 'rad',
  e_q: 'rad',
  e_n: 'rad',
  e_l: 'rad',
  e_m: 'rad',
  e_h: 'rad',
  e_j: 'rad',
  e_w: 'rad',
  e_db: 'rad',
} as const;

const returning = {
  e_cmd: 'rad',
  e_q: 'rad',
  e_n: 'rad',
  e_h: 'rad',
  e_j: 'rad',
  e_db: 'rad',
} as const;

/** Greatest error of a value that lies anywhere within a width, rad: half of it either way. */
export const halfWidth = formula({
  key: 'sensor.halfWidth',
  symbol: 'e_half',
  name: 'Half of a width',
  unit: 'rad',
  given: { w: 'rad' },
  text: 'w / 2',
  source:
    'Definition: a value rounded to a step, or reached from both sides of a gap, is off by half at most',
  of: (g) => g.w / 2,
});

/** Noise that is hardly ever exceeded, rad: three standard deviations, passed by 0.27 % of normal readings. */
export const noiseLimit = formula({
  key: 'sensor.noiseLimit',
  symbol: 'e_n',
  name: 'Three standard deviations of noise',
  unit: 'rad',
  given: { e_noise: 'rad' },
  text: '3 * e_noise',
  source: 'Normal distribution: 99.73 % within three standard deviations',
  of: (g) => 3 * g.e_noise,
});

/** Error by play between sensor and output, rad at the output: half of the greater of what is entered and what the stages give. */
export const playShare = formula({
  key: 'sensor.playShare',
  symbol: 'e_j',
  name: 'Error by play between sensor and output',
  unit: 'rad',
  given: { j_s: 'rad', phi_after: 'rad' },
  text: 'max(j_s, phi_after) / 2',
  source: 'Definition of play: the output lies anywhere within it',
  of: (g) => Math.max(g.j_s, g.phi_after) / 2,
});

/** Twist between sensor and load under the holding torque, rad at the output: that of the stages between and that of the arm. */
export const windUpShare = formula({
  key: 'sensor.windUpShare',
  symbol: 'e_w',
  name: 'Wind-up between sensor and load',
  unit: 'rad',
  given: { phi_T: 'rad', s_after: '1', phi_arm: 'rad' },
  text: 'phi_T * s_after + phi_arm',
  source: 'Springs in series: each gives its share',
  of: (g) => g.phi_T * g.s_after + g.phi_arm,
});

/** Shares of springs in the give added up. */
export const giveSum = formula({
  key: 'sensor.giveSum',
  symbol: 's_after',
  name: 'Share of the give between sensor and output',
  unit: '1',
  given: { s_before: '1', s_k: '1' },
  text: 's_before + s_k',
  source: 'Springs in series',
  of: (g) => g.s_before + g.s_k,
});

/** Accuracy at worst, rad: all shares on one side. */
export const accuracyWorst = formula({
  key: 'sensor.accuracyWorst',
  symbol: 'e_max',
  name: 'Accuracy of the output at worst',
  unit: 'rad',
  given: shares,
  text: 'e_cmd + e_q + e_n + e_l + e_m + e_h + e_j + e_w + e_db',
  source: 'Worst case: arithmetic sum of the greatest errors',
  of: (g) => g.e_cmd + g.e_q + g.e_n + g.e_l + g.e_m + g.e_h + g.e_j + g.e_w + g.e_db,
});

/** Accuracy as root of the sum of squares, rad: independent shares seldom meet on one side. */
export const accuracyRss = formula({
  key: 'sensor.accuracyRss',
  symbol: 'e_rss',
  name: 'Accuracy of the output, root of the sum of squares',
  unit: 'rad',
  given: shares,
  text: 'sqrt(e_cmd^2 + e_q^2 + e_n^2 + e_l^2 + e_m^2 + e_h^2 + e_j^2 + e_w^2 + e_db^2)',
  source: 'Statistics of independent errors',
  of: (g) =>
    Math.sqrt(
      g.e_cmd ** 2 +
        g.e_q ** 2 +
        g.e_n ** 2 +
        g.e_l ** 2 +
        g.e_m ** 2 +
        g.e_h ** 2 +
        g.e_j ** 2 +
        g.e_w ** 2 +
        g.e_db ** 2,
    ),
});

/**
 * Combined standard uncertainty of the output's position, rad: each limit as a uniform distribution, of which the
 * standard deviation is the limit over √3; noise as a normal one.
 */
export const combinedUncertainty = formula({
  key: 'sensor.combinedUncertainty',
  symbol: 'u_c',
  name: 'Combined standard uncertainty of the position',
  unit: 'rad',
  given: shares,
  text: 'sqrt((e_cmd^2 + e_q^2 + e_l^2 + e_m^2 + e_h^2 + e_j^2 + e_w^2 + e_db^2) / 3 + (e_n / 3)^2)',
  source: 'JCGM 100:2008 (GUM), 4.3.7 for uniform limits and 5.1.2 for their combination',
  of: (g) =>
    Math.sqrt(
      (g.e_cmd ** 2 +
        g.e_q ** 2 +
        g.e_l ** 2 +
        g.e_m ** 2 +
        g.e_h ** 2 +
        g.e_j ** 2 +
        g.e_w ** 2 +
        g.e_db ** 2) /
        3 +
        (g.e_n / 3) ** 2,
    ),
});

/** Expanded uncertainty, rad: about 95 % of all positions lie within it. */
export const expandedUncertainty = formula({
  key: 'sensor.expandedUncertainty',
  symbol: 'U_95',
  name: 'Expanded uncertainty of the position',
  unit: 'rad',
  given: { u_c: 'rad', k: '1' },
  text: 'k * u_c',
  source: 'JCGM 100:2008 (GUM), 6.2.1',
  of: (g) => g.k * g.u_c,
});

/** Repeatability at worst, rad: without what is the same each time at one place under one load. */
export const repeatWorst = formula({
  key: 'sensor.repeatWorst',
  symbol: 'r_max',
  name: 'Repeatability of the output at worst',
  unit: 'rad',
  given: returning,
  text: 'e_cmd + e_q + e_n + e_h + e_j + e_db',
  source: 'Worst case: arithmetic sum; linearity, mounting and wind-up come again alike and fall out',
  of: (g) => g.e_cmd + g.e_q + g.e_n + g.e_h + g.e_j + g.e_db,
});

/** Repeatability as root of the sum of squares, rad. */
export const repeatRss = formula({
  key: 'sensor.repeatRss',
  symbol: 'r_rss',
  name: 'Repeatability of the output, root of the sum of squares',
  unit: 'rad',
  given: returning,
  text: 'sqrt(e_cmd^2 + e_q^2 + e_n^2 + e_h^2 + e_j^2 + e_db^2)',
  source: 'Statistics of independent errors; linearity, mounting and wind-up come again alike and fall out',
  of: (g) => Math.sqrt(g.e_cmd ** 2 + g.e_q ** 2 + g.e_n ** 2 + g.e_h ** 2 + g.e_j ** 2 + g.e_db ** 2),
});

export const budgetFormulas = [
  halfWidth,
  noiseLimit,
  playShare,
  windUpShare,
  giveSum,
  accuracyWorst,
  accuracyRss,
  combinedUncertainty,
  expandedUncertainty,
  repeatWorst,
  repeatRss,
] as const;
