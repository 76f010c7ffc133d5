// What the drawing allows: backlash from tooth thickness allowances, their tolerances and that of the centre distance.
import { formula } from '../../formula';

const DIN = 'DIN 3967:1978, tooth thickness allowances and backlash (from memory)';
const helix = [0, 0.75] as const;
const upper = [-3, -1] as const;

/**
 * Least transverse backlash (m) that the tooth thickness allowances leave: the upper allowances E_sns (m) of both gears,
 * in the normal section, are negative where teeth are thinned.
 */
export const leastBacklashFromAllowances = formula({
  key: 'gears.leastBacklashFromAllowances',
  symbol: 'j_t_min',
  name: 'Least transverse backlash from the thickness allowances',
  unit: 'm',
  given: { E_sns1: 'm', E_sns2: 'm', beta: 'rad' },
  text: '-(E_sns1 + E_sns2) / cos(beta)',
  source: DIN,
  validity: 'Before the tolerance of the centre distance, runout, and heat or moisture take their part.',
  domain: { E_sns1: upper, E_sns2: upper, beta: helix },
  of: (g) => -(g.E_sns1 + g.E_sns2) / Math.cos(g.beta),
});

/** Largest transverse backlash (m): the least one and the thickness tolerances T_sn (m) of both gears. */
export const largestBacklashFromAllowances = formula({
  key: 'gears.largestBacklashFromAllowances',
  symbol: 'j_t_max',
  name: 'Largest transverse backlash from the thickness allowances',
  unit: 'm',
  given: { j_t_min: 'm', T_sn1: 'm', T_sn2: 'm', beta: 'rad' },
  text: 'j_t_min + (T_sn1 + T_sn2) / cos(beta)',
  source: DIN,
  domain: { beta: helix },
  of: (g) => g.j_t_min + (g.T_sn1 + g.T_sn2) / Math.cos(g.beta),
});

/** Change of transverse backlash (m), up or down, over the tolerance ± A_a (m) of the centre distance. */
export const backlashFromCentreTolerance = formula({
  key: 'gears.backlashFromCentreTolerance',
  symbol: 'Delta_j_a',
  name: 'Change of backlash over the centre distance tolerance',
  unit: 'm',
  given: { A_a: 'm', alpha_n: 'rad', beta: 'rad' },
  text: '2 * A_a * tan(alpha_n) / cos(beta)',
  source: DIN,
  domain: { alpha_n: [0.24, 0.5], beta: helix },
  of: (g) => (2 * g.A_a * Math.tan(g.alpha_n)) / Math.cos(g.beta),
});

/** Thinning (m) of a tooth in the normal section that an extra infeed Delta_h (m) of the tool, or a printer's offset, makes. */
export const thinningFromInfeed = formula({
  key: 'gears.thinningFromInfeed',
  symbol: 'Delta_s_n',
  name: 'Tooth thinning from extra depth',
  unit: 'm',
  given: { Delta_h: 'm', alpha_n: 'rad' },
  text: '2 * Delta_h * tan(alpha_n)',
  source: 'ISO 21771:2007, generating profile shift (from memory)',
  domain: { alpha_n: [0.24, 0.5] },
  of: (g) => 2 * g.Delta_h * Math.tan(g.alpha_n),
});

/**
 * Least normal backlash (m) recommended for metal gears in metal cases. l_0 is 1 mm, in which the rule counts its fixed part.
 */
export const recommendedBacklash = formula({
  key: 'gears.recommendedBacklash',
  symbol: 'j_bn_min',
  name: 'Recommended least normal backlash',
  unit: 'm',
  given: { l_0: 'm', a: 'm', m_n: 'm' },
  text: '2 / 3 * (0.06 * l_0 + 0.0005 * a + 0.03 * m_n)',
  source: 'ISO/TR 10064-2:1996, Annex A (from memory)',
  validity:
    'Ferrous gears in ferrous cases, pitch-line velocity below 15 m/s, m_n 1.5 to 18 mm. Plastic needs more: it swells and stretches.',
  of: (g) => (2 / 3) * (0.06 * g.l_0 + 0.0005 * g.a + 0.03 * g.m_n),
});

export const backlashAllowanceFormulas = [
  leastBacklashFromAllowances,
  largestBacklashFromAllowances,
  backlashFromCentreTolerance,
  thinningFromInfeed,
  recommendedBacklash,
] as const;
