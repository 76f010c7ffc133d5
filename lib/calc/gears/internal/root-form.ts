// The root of a ring gear's tooth. The ring is taken as the rack that its counterpart rolls with, as the standard does:
// its straight flanks make the foot narrower than the hollow flanks of a real ring do, which lies on the safe side.
import { formula } from '../../formula';

const ISO = 'ISO 6336-3:2006, clause on internal gears; DIN 3990-3:1987 (from memory)';
const VALID = 'Rack of the ring’s basic profile, load at the tip, 30° tangent; lengths over the module.';
const RIM = 'ISO 6336-3:2006, rim thickness factor (from memory)';
const shape = { alpha_n: [0.26, 0.44], h_fP: [1, 1.3], rho_fP: [0.1, 0.38] } as const;

/** Height of the ring's tooth over the module, from root to tip. */
export const ringToothHeight = formula({
  key: 'gears.ringToothHeight',
  symbol: 'h_t2',
  name: 'Tooth height of the ring over the module',
  unit: '1',
  given: { d_f2: 'm', d_a2: 'm', m_n: 'm' },
  text: '(d_f2 - d_a2) / (2 * m_n)',
  source: ISO,
  domain: { d_f2: [9, 10], d_a2: [5, 8] },
  of: (g) => (g.d_f2 - g.d_a2) / (2 * g.m_n),
});

/** Root chord of the ring's tooth over the module, between the 30° tangents. */
export const ringRootChord = formula({
  key: 'gears.ringRootChord',
  symbol: 's_Fn',
  name: 'Root chord of the ring over the module',
  unit: '1',
  given: { h_fP: '1', rho_fP: '1', alpha_n: 'rad' },
  text: '2 * (pi / 4 + (h_fP - rho_fP) * tan(alpha_n) + rho_fP / cos(alpha_n) - rho_fP * cos(pi / 6))',
  source: ISO,
  validity: VALID,
  domain: shape,
  of: (g) =>
    2 *
    (Math.PI / 4 +
      (g.h_fP - g.rho_fP) * Math.tan(g.alpha_n) +
      g.rho_fP / Math.cos(g.alpha_n) -
      g.rho_fP * Math.cos(Math.PI / 6)),
});

/** Bending arm of a load at the tip of the ring's tooth, over the module. */
export const ringBendingArm = formula({
  key: 'gears.ringBendingArm',
  symbol: 'h_Fa',
  name: 'Bending arm of the ring over the module',
  unit: '1',
  given: { h_t2: '1', alpha_n: 'rad', h_fP: '1', rho_fP: '1' },
  text: 'h_t2 - (pi / 4 + (h_fP - h_t2) * tan(alpha_n)) * tan(alpha_n) - rho_fP * (1 - sin(pi / 6))',
  source: ISO,
  validity: VALID,
  domain: { ...shape, h_t2: [1.8, 2.3] },
  of: (g) =>
    g.h_t2 -
    (Math.PI / 4 + (g.h_fP - g.h_t2) * Math.tan(g.alpha_n)) * Math.tan(g.alpha_n) -
    g.rho_fP * (1 - Math.sin(Math.PI / 6)),
});

/** Factor on the root stress of a ring whose rim behind the roots is s_R (m) thick. */
export const ringRimFactor = formula({
  key: 'gears.ringRimFactor',
  symbol: 'Y_B',
  name: 'Rim thickness factor of a ring',
  unit: '1',
  given: { m_n: 'm', s_R: 'm' },
  text: 'max(1, 1.15 * log(8.324 * m_n / s_R))',
  source: RIM,
  validity: 's_R above 1.75 m_n; a thinner rim is not covered.',
  domain: { m_n: [0.5, 2], s_R: [3.5, 9] },
  of: (g) => Math.max(1, 1.15 * Math.log((8.324 * g.m_n) / g.s_R)),
});

/** Factor on the root stress of an external gear whose rim below the roots is s_R (m) thick; h_t (m) is its tooth height. */
export const gearRimFactor = formula({
  key: 'gears.gearRimFactor',
  symbol: 'Y_B',
  name: 'Rim thickness factor of an external gear',
  unit: '1',
  given: { h_t: 'm', s_R: 'm' },
  text: 'max(1, 1.6 * log(2.242 * h_t / s_R))',
  source: RIM,
  validity: 's_R above 0.5 h_t; a thinner rim is not covered.',
  domain: { h_t: [2, 5], s_R: [2.5, 9] },
  of: (g) => Math.max(1, 1.6 * Math.log((2.242 * g.h_t) / g.s_R)),
});

/** Root stress (Pa) of a gear with a thin rim. */
export const rimmedRootStress = formula({
  key: 'gears.rimmedRootStress',
  symbol: 'sigma_FB',
  name: 'Tooth-root stress, thin rim counted',
  unit: 'Pa',
  given: { sigma_F: 'Pa', Y_B: '1' },
  text: 'sigma_F * Y_B',
  source: RIM,
  of: (g) => g.sigma_F * g.Y_B,
});

/** Ratio of the teeth of an internal pair as flank formulas take it: the ring counts negative. */
export const internalGearRatio = formula({
  key: 'gears.internalGearRatio',
  symbol: 'u_i',
  name: 'Gear ratio of an internal pair, ring negative',
  unit: '1',
  given: { z_2: '1', z_1: '1' },
  text: '-z_2 / z_1',
  source: 'ISO 21771:2007, sign of internal gears (from memory)',
  domain: { z_2: [60, 150], z_1: [12, 40] },
  of: (g) => -g.z_2 / g.z_1,
});

export const ringRootFormulas = [
  ringToothHeight,
  ringRootChord,
  ringBendingArm,
  ringRimFactor,
  gearRimFactor,
  rimmedRootStress,
  internalGearRatio,
] as const;
