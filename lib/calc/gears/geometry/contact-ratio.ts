// How many pairs of teeth share the load, and where on the flank contact begins.
import { formula } from '../../formula';

const ISO = 'ISO 21771:2007, contact ratios (from memory)';
const tip = [6, 9] as const;
const base = [2, 5] as const;
const angle = [0.24, 0.5] as const;

/** Part of the contact ratio that the addendum of one gear gives: path beyond the pitch point over base pitch. */
export const addendumContactRatio = formula({
  key: 'gears.addendumContactRatio',
  symbol: 'eps_a',
  name: 'Addendum contact ratio',
  unit: '1',
  given: { d_a: 'm', d_b: 'm', alpha_wt: 'rad', p_bt: 'm' },
  text: '(sqrt(d_a^2 - d_b^2) / 2 - d_b / 2 * tan(alpha_wt)) / p_bt',
  source: 'DIN 3960:1987; ISO 21771:2007 (from memory)',
  validity: 'd_a > d_b',
  domain: { d_a: tip, d_b: base, alpha_wt: [0.2, 0.4] },
  of: (g) => (Math.sqrt(g.d_a * g.d_a - g.d_b * g.d_b) / 2 - (g.d_b / 2) * Math.tan(g.alpha_wt)) / g.p_bt,
});

/** Transverse contact ratio of an external pair: length of the path of contact over the base pitch. */
export const transverseContactRatio = formula({
  key: 'gears.transverseContactRatio',
  symbol: 'eps_alpha',
  name: 'Transverse contact ratio',
  unit: '1',
  given: { d_a1: 'm', d_b1: 'm', d_a2: 'm', d_b2: 'm', a: 'm', alpha_wt: 'rad', p_bt: 'm' },
  text: '(sqrt(d_a1^2 - d_b1^2) / 2 + sqrt(d_a2^2 - d_b2^2) / 2 - a * sin(alpha_wt)) / p_bt',
  source: ISO,
  validity:
    'External pair, both tips outside their base circles, no tip contact inside the base circle of the mate.',
  domain: { d_a1: tip, d_b1: base, d_a2: tip, d_b2: base, a: [1, 4], alpha_wt: angle },
  of: (g) =>
    (Math.sqrt(g.d_a1 * g.d_a1 - g.d_b1 * g.d_b1) / 2 +
      Math.sqrt(g.d_a2 * g.d_a2 - g.d_b2 * g.d_b2) / 2 -
      g.a * Math.sin(g.alpha_wt)) /
    g.p_bt,
});

/** Overlap ratio of face width b (m); for a double-helical gear b is that of one half. */
export const overlapRatio = formula({
  key: 'gears.overlapRatio',
  symbol: 'eps_beta',
  name: 'Overlap ratio',
  unit: '1',
  given: { b: 'm', beta: 'rad', m_n: 'm' },
  text: 'b * sin(beta) / (pi * m_n)',
  source: ISO,
  domain: { beta: [0, 0.75] },
  of: (g) => (g.b * Math.sin(g.beta)) / (Math.PI * g.m_n),
});

/** Total contact ratio. */
export const totalContactRatio = formula({
  key: 'gears.totalContactRatio',
  symbol: 'eps_gamma',
  name: 'Total contact ratio',
  unit: '1',
  given: { eps_alpha: '1', eps_beta: '1' },
  text: 'eps_alpha + eps_beta',
  source: ISO,
  of: (g) => g.eps_alpha + g.eps_beta,
});

/** Contact ratio of the virtual spur gear that the root strength formulas use. */
export const virtualContactRatio = formula({
  key: 'gears.virtualContactRatio',
  symbol: 'eps_alphan',
  name: 'Virtual contact ratio',
  unit: '1',
  given: { eps_alpha: '1', beta_b: 'rad' },
  text: 'eps_alpha / cos(beta_b)^2',
  source: 'ISO 6336-3:2006; DIN 3990-3:1987 (from memory)',
  domain: { beta_b: [0, 0.7] },
  of: (g) => g.eps_alpha / Math.cos(g.beta_b) ** 2,
});

/**
 * Radius of curvature (m) of the flank where the tip of the mate first touches it. Below zero the mate's tip
 * reaches inside the base circle: the teeth interfere.
 */
export const activeProfileStart = formula({
  key: 'gears.activeProfileStart',
  symbol: 'rho_Nf',
  name: 'Radius of curvature at the start of the active profile',
  unit: 'm',
  given: { a: 'm', alpha_wt: 'rad', d_a_mate: 'm', d_b_mate: 'm' },
  text: 'a * sin(alpha_wt) - sqrt(d_a_mate^2 - d_b_mate^2) / 2',
  source: 'ISO 21771:2007, start of active profile (from memory)',
  domain: { a: [20, 40], alpha_wt: angle, d_a_mate: [6, 8], d_b_mate: [3, 5] },
  of: (g) => g.a * Math.sin(g.alpha_wt) - Math.sqrt(g.d_a_mate * g.d_a_mate - g.d_b_mate * g.d_b_mate) / 2,
});

/**
 * Radius of curvature (m) of the flank where the rack's straight edge leaves off and the fillet begins; h_FfP is the
 * straight depth of the rack in modules. The active profile must not start below it. Below zero the tooth is undercut.
 */
export const rootFormCurvature = formula({
  key: 'gears.rootFormCurvature',
  symbol: 'rho_Ff',
  name: 'Radius of curvature at the root form circle',
  unit: 'm',
  given: { d: 'm', alpha_t: 'rad', m_n: 'm', h_FfP: '1', x: '1' },
  text: 'd / 2 * sin(alpha_t) - m_n * (h_FfP - x) / sin(alpha_t)',
  source: 'ISO 21771:2007, root form diameter of a rack-cut gear (from memory)',
  domain: { d: [20, 90], alpha_t: angle, m_n: [0.5, 1], h_FfP: [0.9, 1.1], x: [-0.3, 0.8] },
  of: (g) => (g.d / 2) * Math.sin(g.alpha_t) - (g.m_n * (g.h_FfP - g.x)) / Math.sin(g.alpha_t),
});

/** Depth of the rack's straight edge below its reference line, in modules: what the tip rounding leaves of the dedendum. */
export const rackFormDepth = formula({
  key: 'gears.rackFormDepth',
  symbol: 'h_FfP',
  name: 'Straight depth of the basic rack',
  unit: '1',
  given: { h_fP: '1', rho_fP: '1', alpha_n: 'rad' },
  text: 'h_fP - rho_fP * (1 - sin(alpha_n))',
  source: 'ISO 53:1998, basic rack (from memory)',
  domain: { h_fP: [1, 1.4], rho_fP: [0, 0.4], alpha_n: angle },
  of: (g) => g.h_fP - g.rho_fP * (1 - Math.sin(g.alpha_n)),
});

/** Length (m) of the flank, along the involute, between the start of the active profile and the tip. */
export const activeProfileLength = formula({
  key: 'gears.activeProfileLength',
  symbol: 'l_Fl',
  name: 'Active profile length',
  unit: 'm',
  given: { d_a: 'm', d_b: 'm', rho_Nf: 'm' },
  text: '((d_a^2 - d_b^2) / 4 - rho_Nf^2) / d_b',
  source:
    'Arc of an involute, (ρ_a² − ρ_Nf²)/d_b; the wear section of VDI 2736 Part 2:2014 uses it (from memory)',
  validity: 'rho_Nf ≥ 0',
  domain: { d_a: tip, d_b: base, rho_Nf: [0, 1] },
  of: (g) => ((g.d_a * g.d_a - g.d_b * g.d_b) / 4 - g.rho_Nf * g.rho_Nf) / g.d_b,
});

export const contactRatioFormulas = [
  addendumContactRatio,
  transverseContactRatio,
  overlapRatio,
  totalContactRatio,
  virtualContactRatio,
  activeProfileStart,
  rootFormCurvature,
  rackFormDepth,
  activeProfileLength,
] as const;
