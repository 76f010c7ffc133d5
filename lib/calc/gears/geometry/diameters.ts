// Diameters of one gear of an external pair, and the clearance between tip and root.
import { formula } from '../../formula';

const ISO = 'ISO 21771:2007 (from memory)';
const teeth = [8, 150] as const;
const helix = [0, 0.75] as const;

/** Reference diameter (m). */
export const referenceDiameter = formula({
  key: 'gears.referenceDiameter',
  symbol: 'd',
  name: 'Reference diameter',
  unit: 'm',
  given: { z: '1', m_n: 'm', beta: 'rad' },
  text: 'z * m_n / cos(beta)',
  source: ISO,
  domain: { z: teeth, beta: helix },
  of: (g) => (g.z * g.m_n) / Math.cos(g.beta),
});

/** Diameter of the circle (m) off which the flanks are unrolled. */
export const baseDiameter = formula({
  key: 'gears.baseDiameter',
  symbol: 'd_b',
  name: 'Base diameter',
  unit: 'm',
  given: { d: 'm', alpha_t: 'rad' },
  text: 'd * cos(alpha_t)',
  source: ISO,
  domain: { alpha_t: [0.2, 0.5] },
  of: (g) => g.d * Math.cos(g.alpha_t),
});

/** Tip diameter (m) of an external gear: basic rack addendum h_aP, shift x and tip shortening k in modules. */
export const tipDiameter = formula({
  key: 'gears.tipDiameter',
  symbol: 'd_a',
  name: 'Tip diameter',
  unit: 'm',
  given: { d: 'm', m_n: 'm', h_aP: '1', x: '1', k: '1' },
  text: 'd + 2 * m_n * (h_aP + x - k)',
  source: ISO,
  domain: { h_aP: [0.8, 1.2], x: [-0.3, 0.8], k: [0, 0.3] },
  of: (g) => g.d + 2 * g.m_n * (g.h_aP + g.x - g.k),
});

/** Root diameter (m) of an external gear: basic rack dedendum h_fP and shift x in modules. */
export const rootDiameter = formula({
  key: 'gears.rootDiameter',
  symbol: 'd_f',
  name: 'Root diameter',
  unit: 'm',
  given: { d: 'm', m_n: 'm', h_fP: '1', x: '1' },
  text: 'd - 2 * m_n * (h_fP - x)',
  source: ISO,
  domain: { d: [20, 90], m_n: [0.5, 4], h_fP: [1.1, 1.4], x: [-0.3, 0.8] },
  of: (g) => g.d - 2 * g.m_n * (g.h_fP - g.x),
});

/** Diameter (m) of the circle that rolls on its mate's at centre distance a (m). */
export const pitchDiameter = formula({
  key: 'gears.pitchDiameter',
  symbol: 'd_w',
  name: 'Working pitch diameter',
  unit: 'm',
  given: { a: 'm', z: '1', z_mate: '1' },
  text: '2 * a * z / (z + z_mate)',
  source: ISO,
  domain: { z: teeth, z_mate: teeth },
  of: (g) => (2 * g.a * g.z) / (g.z + g.z_mate),
});

/** Depth of a tooth (m) from tip to root. */
export const toothDepth = formula({
  key: 'gears.toothDepth',
  symbol: 'h',
  name: 'Tooth depth',
  unit: 'm',
  given: { d_a: 'm', d_f: 'm' },
  text: '(d_a - d_f) / 2',
  source: ISO,
  domain: { d_a: [5, 10], d_f: [0.5, 4] },
  of: (g) => (g.d_a - g.d_f) / 2,
});

/** Clearance (m) between the tip of this gear and the root of its mate. */
export const tipClearance = formula({
  key: 'gears.tipClearance',
  symbol: 'c',
  name: 'Tip clearance',
  unit: 'm',
  given: { a: 'm', d_a: 'm', d_f_mate: 'm' },
  text: 'a - d_a / 2 - d_f_mate / 2',
  source: ISO,
  domain: { a: [6, 9], d_a: [0.5, 5], d_f_mate: [0.5, 5] },
  of: (g) => g.a - g.d_a / 2 - g.d_f_mate / 2,
});

export const diameterFormulas = [
  referenceDiameter,
  baseDiameter,
  tipDiameter,
  rootDiameter,
  pitchDiameter,
  toothDepth,
  tipClearance,
] as const;
