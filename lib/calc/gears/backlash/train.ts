// Play of the whole train at its output: each mesh divided by the ratio behind it, added up at worst and in likelihood.
import { formula } from '../../formula';

const TRADE = 'Kinematics of gears in series';
const RSS =
  'Error propagation of independent deviations (root of the sum of squares), ISO/IEC Guide 98-3:2008';

/** Angle (rad) at the output for a play or twist phi_m (rad) of a shaft with the ratio i_after (1) between it and the output. */
export const angleAtOutput = formula({
  key: 'gears.angleAtOutput',
  symbol: 'phi_out',
  name: 'Angle referred to the output',
  unit: 'rad',
  given: { phi_m: 'rad', i_after: '1' },
  text: 'phi_m / abs(i_after)',
  source: TRADE,
  domain: { i_after: [1, 60] },
  of: (g) => g.phi_m / Math.abs(g.i_after),
});

/** Play at the output (rad) with one more mesh, all taken at the end of their tolerance that is worst. */
export const backlashWorstSum = formula({
  key: 'gears.backlashWorstSum',
  symbol: 'phi_worst',
  name: 'Backlash at the output up to this mesh, worst case',
  unit: 'rad',
  given: { phi_before: 'rad', phi_out: 'rad' },
  text: 'phi_before + phi_out',
  source: TRADE,
  of: (g) => g.phi_before + g.phi_out,
});

/** Middle (rad) between the least and the largest play of a mesh. */
export const backlashMean = formula({
  key: 'gears.backlashMean',
  symbol: 'phi_mid',
  name: 'Mean backlash',
  unit: 'rad',
  given: { phi_min: 'rad', phi_max: 'rad' },
  text: '(phi_min + phi_max) / 2',
  source: 'Definition',
  of: (g) => (g.phi_min + g.phi_max) / 2,
});

/** Half of the width (rad) between the least and the largest play of a mesh. */
export const backlashHalfWidth = formula({
  key: 'gears.backlashHalfWidth',
  symbol: 't_phi',
  name: 'Half width of the backlash',
  unit: 'rad',
  given: { phi_max: 'rad', phi_min: 'rad' },
  text: '(phi_max - phi_min) / 2',
  source: 'Definition',
  domain: { phi_max: [2, 4], phi_min: [0.1, 1] },
  of: (g) => (g.phi_max - g.phi_min) / 2,
});

/** Half width (rad) of the sum with one more mesh whose deviation is independent of the others. */
export const backlashScatterSum = formula({
  key: 'gears.backlashScatterSum',
  symbol: 't_sum',
  name: 'Half width of the backlash at the output up to this mesh, statistical',
  unit: 'rad',
  given: { t_before: 'rad', t_phi: 'rad' },
  text: 'sqrt(t_before^2 + t_phi^2)',
  source: RSS,
  validity:
    'Independent deviations, each centred in its tolerance. A printer that makes every tooth too thick by the same amount breaks this: use the worst case.',
  of: (g) => Math.sqrt(g.t_before * g.t_before + g.t_phi * g.t_phi),
});

/** Likely largest play at the output (rad): sum of the means and the statistical half width. */
export const backlashLikely = formula({
  key: 'gears.backlashLikely',
  symbol: 'phi_likely',
  name: 'Largest backlash at the output, statistical',
  unit: 'rad',
  given: { phi_mid: 'rad', t_sum: 'rad' },
  text: 'phi_mid + t_sum',
  source: RSS,
  of: (g) => g.phi_mid + g.t_sum,
});

export const trainBacklashFormulas = [
  angleAtOutput,
  backlashWorstSum,
  backlashMean,
  backlashHalfWidth,
  backlashScatterSum,
  backlashLikely,
] as const;
