// A worm and its wheel at right angles: lead angle, circles, centre distance and sliding speed.
import { formula } from '../../formula';

const ISO = 'ISO/TR 14521:2010; DIN 3975-1:2002, worm gears (from memory)';
const starts = [1, 6] as const;
const wheel = [20, 80] as const;
const lead = [0.03, 0.7] as const;

/** Lead angle (rad) at the reference cylinder of a worm of z_1 starts and diameter d_m1 (m); m_x (m) is the axial module. */
export const leadAngle = formula({
  key: 'gears.leadAngle',
  symbol: 'gamma_m',
  name: 'Lead angle of the worm',
  unit: 'rad',
  given: { z_1: '1', m_x: 'm', d_m1: 'm' },
  text: 'atan(z_1 * m_x / d_m1)',
  source: ISO,
  domain: { z_1: starts },
  of: (g) => Math.atan((g.z_1 * g.m_x) / g.d_m1),
});

/** Reference diameter (m) of the worm wheel. */
export const wormWheelDiameter = formula({
  key: 'gears.wormWheelDiameter',
  symbol: 'd_m2',
  name: 'Reference diameter of the worm wheel',
  unit: 'm',
  given: { z_2: '1', m_x: 'm', x_2: '1' },
  text: 'm_x * (z_2 + 2 * x_2)',
  source: ISO,
  domain: { z_2: wheel, x_2: [-0.5, 0.5] },
  of: (g) => g.m_x * (g.z_2 + 2 * g.x_2),
});

/** Distance of the crossed axes (m). */
export const wormCentreDistance = formula({
  key: 'gears.wormCentreDistance',
  symbol: 'a',
  name: 'Centre distance of a worm pair',
  unit: 'm',
  given: { d_m1: 'm', d_m2: 'm' },
  text: '(d_m1 + d_m2) / 2',
  source: ISO,
  of: (g) => (g.d_m1 + g.d_m2) / 2,
});

/** Ratio of a worm stage: teeth of the wheel over starts of the worm. */
export const wormRatio = formula({
  key: 'gears.wormRatio',
  symbol: 'i',
  name: 'Ratio of a worm stage',
  unit: '1',
  given: { z_2: '1', z_1: '1' },
  text: 'z_2 / z_1',
  source: ISO,
  domain: { z_2: wheel, z_1: starts },
  of: (g) => g.z_2 / g.z_1,
});

/** Speed (m/s) at which the worm's thread slides along the wheel's teeth. */
export const wormSlidingSpeed = formula({
  key: 'gears.wormSlidingSpeed',
  symbol: 'v_g',
  name: 'Sliding speed of the worm',
  unit: 'm/s',
  given: { omega_1: 'rad/s', d_m1: 'm', gamma_m: 'rad' },
  text: 'omega_1 * d_m1 / (2 * cos(gamma_m))',
  source: ISO,
  domain: { gamma_m: lead },
  of: (g) => (g.omega_1 * g.d_m1) / (2 * Math.cos(g.gamma_m)),
});

/** Pressure angle (rad) square to the thread, from that in the axial section. */
export const wormNormalAngle = formula({
  key: 'gears.wormNormalAngle',
  symbol: 'alpha_n',
  name: 'Normal pressure angle of the worm',
  unit: 'rad',
  given: { alpha_x: 'rad', gamma_m: 'rad' },
  text: 'atan(tan(alpha_x) * cos(gamma_m))',
  source: ISO,
  domain: { alpha_x: [0.24, 0.5], gamma_m: lead },
  of: (g) => Math.atan(Math.tan(g.alpha_x) * Math.cos(g.gamma_m)),
});

export const wormGeometryFormulas = [
  leadAngle,
  wormWheelDiameter,
  wormCentreDistance,
  wormRatio,
  wormSlidingSpeed,
  wormNormalAngle,
] as const;
