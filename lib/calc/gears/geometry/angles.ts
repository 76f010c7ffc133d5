// Angles, modules and pitches of a helical cylindrical gear, and the involute function.
import { formula } from '../../formula';
import { inverseInvolute } from '../../numeric/involute';

const ISO = 'ISO 21771:2007, cylindrical involute gears, concepts and geometry (from memory)';
const angle = [0.2, 0.5] as const;
const helix = [0, 0.75] as const;

/** Pressure angle in the transverse plane (rad) from the normal one and the helix angle (rad). */
export const transversePressureAngle = formula({
  key: 'gears.transversePressureAngle',
  symbol: 'alpha_t',
  name: 'Transverse pressure angle',
  unit: 'rad',
  given: { alpha_n: 'rad', beta: 'rad' },
  text: 'atan(tan(alpha_n) / cos(beta))',
  source: ISO,
  domain: { alpha_n: angle, beta: helix },
  of: (g) => Math.atan(Math.tan(g.alpha_n) / Math.cos(g.beta)),
});

/** Module in the transverse plane (m) from the normal module (m) and the helix angle (rad). */
export const transverseModule = formula({
  key: 'gears.transverseModule',
  symbol: 'm_t',
  name: 'Transverse module',
  unit: 'm',
  given: { m_n: 'm', beta: 'rad' },
  text: 'm_n / cos(beta)',
  source: ISO,
  domain: { beta: helix },
  of: (g) => g.m_n / Math.cos(g.beta),
});

/** Helix angle on the base cylinder (rad). */
export const baseHelixAngle = formula({
  key: 'gears.baseHelixAngle',
  symbol: 'beta_b',
  name: 'Base helix angle',
  unit: 'rad',
  given: { beta: 'rad', alpha_n: 'rad' },
  text: 'asin(sin(beta) * cos(alpha_n))',
  source: ISO,
  domain: { alpha_n: angle, beta: helix },
  of: (g) => Math.asin(Math.sin(g.beta) * Math.cos(g.alpha_n)),
});

/** The involute function of an angle (rad). */
export const involuteOfAngle = formula({
  key: 'gears.involute',
  symbol: 'inv_alpha',
  name: 'Involute of an angle',
  unit: '1',
  given: { alpha: 'rad' },
  text: 'tan(alpha) - alpha',
  source: ISO,
  domain: { alpha: [0.1, 0.9] },
  of: (g) => Math.tan(g.alpha) - g.alpha,
});

/** The angle (rad) whose involute is given. Not a number for a negative involute: there is no such angle. */
export const angleOfInvolute = formula({
  key: 'gears.inverseInvolute',
  symbol: 'alpha',
  name: 'Angle of an involute',
  unit: 'rad',
  given: { inv_alpha: '1' },
  text: 'tan(alpha) - alpha - inv_alpha',
  source: ISO,
  validity: 'inv_alpha ≥ 0',
  residual: { unit: '1' },
  domain: { inv_alpha: [0.0005, 0.4] },
  of: (g) => inverseInvolute(g.inv_alpha),
});

/** Pitch along the reference circle in the transverse plane (m). */
export const transversePitch = formula({
  key: 'gears.transversePitch',
  symbol: 'p_t',
  name: 'Transverse pitch',
  unit: 'm',
  given: { m_n: 'm', beta: 'rad' },
  text: 'pi * m_n / cos(beta)',
  source: ISO,
  domain: { beta: helix },
  of: (g) => (Math.PI * g.m_n) / Math.cos(g.beta),
});

/** Pitch square to the teeth (m). */
export const normalPitch = formula({
  key: 'gears.normalPitch',
  symbol: 'p_n',
  name: 'Normal pitch',
  unit: 'm',
  given: { m_n: 'm' },
  text: 'pi * m_n',
  source: ISO,
  of: (g) => Math.PI * g.m_n,
});

/** Pitch along the axis (m); a spur gear has none. */
export const axialPitch = formula({
  key: 'gears.axialPitch',
  symbol: 'p_x',
  name: 'Axial pitch',
  unit: 'm',
  given: { m_n: 'm', beta: 'rad' },
  text: 'pi * m_n / sin(beta)',
  source: ISO,
  validity: 'beta > 0',
  domain: { beta: [0.05, 0.75] },
  of: (g) => (Math.PI * g.m_n) / Math.sin(g.beta),
});

/** Pitch along the base circle (m): the distance of neighbouring flanks on the line of action. */
export const transverseBasePitch = formula({
  key: 'gears.transverseBasePitch',
  symbol: 'p_bt',
  name: 'Transverse base pitch',
  unit: 'm',
  given: { m_n: 'm', beta: 'rad', alpha_t: 'rad' },
  text: 'pi * m_n / cos(beta) * cos(alpha_t)',
  source: ISO,
  domain: { beta: helix, alpha_t: angle },
  of: (g) => ((Math.PI * g.m_n) / Math.cos(g.beta)) * Math.cos(g.alpha_t),
});

export const angleFormulas = [
  transversePressureAngle,
  transverseModule,
  baseHelixAngle,
  involuteOfAngle,
  angleOfInvolute,
  transversePitch,
  normalPitch,
  axialPitch,
  transverseBasePitch,
] as const;
