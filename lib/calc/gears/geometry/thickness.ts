// Thickness of the tooth: on the reference circle, at the tip, and as a gear-tooth calliper sees it.
import { formula } from '../../formula';
import { involute } from '../../numeric/involute';

const ISO = 'ISO 21771:2007, tooth thickness (from memory)';
const SDP = 'SDP/SI, Elements of Metric Gear Technology, section 10, Table 10-1';
const angle = [0.24, 0.5] as const;

/** Tooth thickness (m) on the reference cylinder in the normal section. */
export const toothThickness = formula({
  key: 'gears.toothThickness',
  symbol: 's_n',
  name: 'Normal tooth thickness on the reference cylinder',
  unit: 'm',
  given: { m_n: 'm', x: '1', alpha_n: 'rad' },
  text: 'm_n * (pi / 2 + 2 * x * tan(alpha_n))',
  source: ISO,
  validity: 'Without backlash allowance.',
  domain: { x: [-0.5, 1], alpha_n: angle },
  of: (g) => g.m_n * (Math.PI / 2 + 2 * g.x * Math.tan(g.alpha_n)),
});

/** Tooth thickness (m) on the reference cylinder in the transverse section. */
export const transverseToothThickness = formula({
  key: 'gears.transverseToothThickness',
  symbol: 's_t',
  name: 'Transverse tooth thickness on the reference cylinder',
  unit: 'm',
  given: { s_n: 'm', beta: 'rad' },
  text: 's_n / cos(beta)',
  source: ISO,
  domain: { beta: [0, 0.75] },
  of: (g) => g.s_n / Math.cos(g.beta),
});

/** Transverse pressure angle (rad) at the tip. */
export const tipPressureAngle = formula({
  key: 'gears.tipPressureAngle',
  symbol: 'alpha_at',
  name: 'Transverse pressure angle at the tip',
  unit: 'rad',
  given: { d_b: 'm', d_a: 'm' },
  text: 'acos(d_b / d_a)',
  source: ISO,
  validity: 'd_a ≥ d_b',
  domain: { d_b: [2, 5], d_a: [6, 9] },
  of: (g) => Math.acos(g.d_b / g.d_a),
});

/** Tooth thickness (m) at the tip in the transverse section; zero or less: the tooth is pointed below its tip. */
export const tipThickness = formula({
  key: 'gears.tipThickness',
  symbol: 's_at',
  name: 'Transverse tooth thickness at the tip',
  unit: 'm',
  given: { d_a: 'm', s_t: 'm', d: 'm', alpha_t: 'rad', alpha_at: 'rad' },
  text: 'd_a * (s_t / d + (tan(alpha_t) - alpha_t) - (tan(alpha_at) - alpha_at))',
  source: ISO,
  domain: { s_t: [3, 6], d: [1, 5], alpha_t: [0.3, 0.4], alpha_at: [0.45, 0.6] },
  of: (g) => g.d_a * (g.s_t / g.d + involute(g.alpha_t) - involute(g.alpha_at)),
});

/** Helix angle (rad) on the tip cylinder. */
export const tipHelixAngle = formula({
  key: 'gears.tipHelixAngle',
  symbol: 'beta_a',
  name: 'Helix angle at the tip',
  unit: 'rad',
  given: { d_a: 'm', d: 'm', beta: 'rad' },
  text: 'atan(d_a / d * tan(beta))',
  source: ISO,
  domain: { beta: [0, 0.75] },
  of: (g) => Math.atan((g.d_a / g.d) * Math.tan(g.beta)),
});

/** Tooth thickness (m) at the tip in the normal section. Below about 0.2 to 0.4 modules the tip is weak. */
export const normalTipThickness = formula({
  key: 'gears.normalTipThickness',
  symbol: 's_an',
  name: 'Normal tooth thickness at the tip',
  unit: 'm',
  given: { s_at: 'm', beta_a: 'rad' },
  text: 's_at * cos(beta_a)',
  source: ISO,
  domain: { beta_a: [0, 0.75] },
  of: (g) => g.s_at * Math.cos(g.beta_a),
});

/** Half of the angle (rad) that a tooth of thickness s (m) takes up on a circle of diameter d (m). */
export const halfThicknessAngle = formula({
  key: 'gears.halfThicknessAngle',
  symbol: 'psi',
  name: 'Half angle of the tooth thickness',
  unit: 'rad',
  given: { s_t: 'm', d: 'm' },
  text: 's_t / d',
  source: SDP,
  of: (g) => g.s_t / g.d,
});

/** Straight-line tooth thickness (m) of a spur tooth at its reference circle. */
export const chordalThickness = formula({
  key: 'gears.chordalThickness',
  symbol: 's_c',
  name: 'Chordal tooth thickness',
  unit: 'm',
  given: { d: 'm', psi: 'rad' },
  text: 'd * sin(psi)',
  source: SDP,
  validity: 'Spur gear; for a helical one with the virtual tooth number.',
  domain: { psi: [0.02, 0.3] },
  of: (g) => g.d * Math.sin(g.psi),
});

/** Depth (m) from the tip at which the chord lies; h_a (m) is the addendum above the reference circle. */
export const chordalHeight = formula({
  key: 'gears.chordalHeight',
  symbol: 'h_c',
  name: 'Chordal height',
  unit: 'm',
  given: { d: 'm', psi: 'rad', h_a: 'm' },
  text: 'd / 2 * (1 - cos(psi)) + h_a',
  source: SDP,
  domain: { psi: [0.02, 0.3] },
  of: (g) => (g.d / 2) * (1 - Math.cos(g.psi)) + g.h_a,
});

export const thicknessFormulas = [
  toothThickness,
  transverseToothThickness,
  tipPressureAngle,
  tipThickness,
  tipHelixAngle,
  normalTipThickness,
  halfThicknessAngle,
  chordalThickness,
  chordalHeight,
] as const;
