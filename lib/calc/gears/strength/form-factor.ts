// Tooth form factor and stress correction factor for load at the tip, step by step.
// All lengths are over the normal module, all angles in the virtual spur gear.
import { formula } from '../../formula';
import { involute } from '../../numeric/involute';

const ISO = 'ISO 6336-3 (1996) and DIN 3990-3:1987, method C, load at the tip (from memory)';
const root = {
  G: [-1.2, -0.3],
  z_n: [12, 150],
  theta: [0.8, 1],
  rho_fP: [0.2, 0.4],
} as const;
const alpha_n = [0.26, 0.44] as const;

/** Half thickness of the tool tooth at the centre of its tip rounding, from the tooth axis. */
export const toolHalfSpace = formula({
  key: 'gears.toolHalfSpace',
  symbol: 'E',
  name: 'Tool parameter E over the module',
  unit: '1',
  given: { h_fP: '1', alpha_n: 'rad', rho_fP: '1' },
  text: 'pi / 4 - h_fP * tan(alpha_n) - (1 - sin(alpha_n)) * rho_fP / cos(alpha_n)',
  source: ISO,
  validity: 'Tool without protuberance.',
  domain: { h_fP: [1, 1.3], alpha_n: [0.26, 0.36], rho_fP: [0.1, 0.25] },
  of: (g) =>
    Math.PI / 4 - g.h_fP * Math.tan(g.alpha_n) - ((1 - Math.sin(g.alpha_n)) * g.rho_fP) / Math.cos(g.alpha_n),
});

/** Distance of the tool's rounding centre from the reference circle, outward positive. */
export const roundingCentreHeight = formula({
  key: 'gears.roundingCentreHeight',
  symbol: 'G',
  name: 'Tool parameter G over the module',
  unit: '1',
  given: { rho_fP: '1', h_fP: '1', x: '1' },
  text: 'rho_fP - h_fP + x',
  source: ISO,
  domain: { rho_fP: [0.1, 0.4], h_fP: [1.1, 1.4], x: [-0.3, 0.5] },
  of: (g) => g.rho_fP - g.h_fP + g.x,
});

/** Angle (rad) from which the search for the 30° tangent starts. */
export const tangentStart = formula({
  key: 'gears.tangentStart',
  symbol: 'H',
  name: 'Auxiliary angle H',
  unit: 'rad',
  given: { z_n: '1', E: '1' },
  text: '2 / z_n * (pi / 2 - E) - pi / 3',
  source: ISO,
  domain: { z_n: [12, 150], E: [0, 0.3] },
  of: (g) => (2 / g.z_n) * (Math.PI / 2 - g.E) - Math.PI / 3,
});

/**
 * Angle (rad) on the fillet at which its tangent makes 30° with the tooth axis. Not a number when the search finds no
 * such point: too few teeth for the tool.
 */
export const tangentAngle = formula({
  key: 'gears.tangentAngle',
  symbol: 'theta',
  name: 'Auxiliary angle of the 30° tangent',
  unit: 'rad',
  given: { G: '1', z_n: '1', H: 'rad' },
  text: 'theta - 2 * G / z_n * tan(theta) + H',
  source: ISO,
  validity: 'z_n of about 5 or more with the standard tool.',
  residual: { unit: '1' },
  domain: { G: root.G, z_n: root.z_n, H: [-1.02, -0.8] },
  of: (g) => {
    const c = (2 * g.G) / g.z_n;
    let theta = -g.H;
    for (let step = 0; step < 60; step++) {
      const t = Math.tan(theta);
      const next = theta - (theta - c * t + g.H) / (1 - c * (1 + t * t));
      if (Math.abs(next - theta) <= 1e-15) return next;
      theta = next;
    }
    return Number.NaN;
  },
});

/** Chord of the tooth between its two 30° tangents. */
export const rootChord = formula({
  key: 'gears.rootChord',
  symbol: 's_Fn',
  name: 'Root chord at the 30° tangent over the module',
  unit: '1',
  given: { z_n: '1', theta: 'rad', G: '1', rho_fP: '1' },
  text: 'z_n * sin(pi / 3 - theta) + sqrt(3) * (G / cos(theta) - rho_fP)',
  source: ISO,
  domain: { ...root, theta: [0.7, 0.9], z_n: [40, 150] },
  of: (g) => g.z_n * Math.sin(Math.PI / 3 - g.theta) + Math.sqrt(3) * (g.G / Math.cos(g.theta) - g.rho_fP),
});

/** Radius of the fillet at the 30° tangent. */
export const filletRadius = formula({
  key: 'gears.filletRadius',
  symbol: 'rho_F',
  name: 'Fillet radius at the 30° tangent over the module',
  unit: '1',
  given: { rho_fP: '1', G: '1', theta: 'rad', z_n: '1' },
  text: 'rho_fP + 2 * G^2 / (cos(theta) * (z_n * cos(theta)^2 - 2 * G))',
  source: ISO,
  domain: root,
  of: (g) => {
    const c = Math.cos(g.theta);
    return g.rho_fP + (2 * g.G * g.G) / (c * (g.z_n * c * c - 2 * g.G));
  },
});

/** Tip diameter of the virtual spur gear. */
export const virtualTipDiameter = formula({
  key: 'gears.virtualTipDiameter',
  symbol: 'd_an',
  name: 'Tip diameter of the virtual gear over the module',
  unit: '1',
  given: { z_n: '1', d_a: 'm', d: 'm', m_n: 'm' },
  text: 'z_n + (d_a - d) / m_n',
  source: ISO,
  domain: { z_n: [12, 150], d_a: [6, 9], d: [2, 5] },
  of: (g) => g.z_n + (g.d_a - g.d) / g.m_n,
});

/** Pressure angle (rad) at the tip of the virtual spur gear. */
export const virtualTipPressureAngle = formula({
  key: 'gears.virtualTipPressureAngle',
  symbol: 'alpha_an',
  name: 'Pressure angle at the tip of the virtual gear',
  unit: 'rad',
  given: { z_n: '1', alpha_n: 'rad', d_an: '1' },
  text: 'acos(z_n * cos(alpha_n) / d_an)',
  source: ISO,
  domain: { z_n: [12, 50], alpha_n, d_an: [52, 60] },
  of: (g) => Math.acos((g.z_n * Math.cos(g.alpha_n)) / g.d_an),
});

/** Half angle (rad) of the tooth thickness at the tip of the virtual spur gear. */
export const tipThicknessAngle = formula({
  key: 'gears.tipThicknessAngle',
  symbol: 'gamma_a',
  name: 'Half angle of the tooth at the tip',
  unit: 'rad',
  given: { x: '1', alpha_n: 'rad', z_n: '1', alpha_an: 'rad' },
  text: '(pi / 2 + 2 * x * tan(alpha_n)) / z_n + (tan(alpha_n) - alpha_n) - (tan(alpha_an) - alpha_an)',
  source: ISO,
  domain: { x: [-0.3, 0.8], alpha_n: [0.26, 0.3], z_n: [12, 40], alpha_an: [0.5, 0.6] },
  of: (g) =>
    (Math.PI / 2 + 2 * g.x * Math.tan(g.alpha_n)) / g.z_n + involute(g.alpha_n) - involute(g.alpha_an),
});

/** Angle (rad) at which the load at the tip leans against the square to the tooth axis. */
export const tipLoadAngle = formula({
  key: 'gears.tipLoadAngle',
  symbol: 'alpha_Fan',
  name: 'Load direction angle at the tip',
  unit: 'rad',
  given: { alpha_an: 'rad', gamma_a: 'rad' },
  text: 'alpha_an - gamma_a',
  source: ISO,
  domain: { alpha_an: [0.3, 0.6], gamma_a: [0, 0.1] },
  of: (g) => g.alpha_an - g.gamma_a,
});

/** Height of the load's line above the root chord, on the tooth axis. */
export const bendingArm = formula({
  key: 'gears.bendingArm',
  symbol: 'h_Fa',
  name: 'Bending moment arm over the module',
  unit: '1',
  given: { z_n: '1', alpha_n: 'rad', alpha_Fan: 'rad', theta: 'rad', G: '1', rho_fP: '1' },
  text: '(z_n * cos(alpha_n) / cos(alpha_Fan) - z_n * cos(pi / 3 - theta) - G / cos(theta) + rho_fP) / 2',
  source: ISO,
  domain: { ...root, alpha_n: [0.26, 0.36], alpha_Fan: [0.5, 0.6], theta: [0.5, 0.7] },
  of: (g) =>
    ((g.z_n * Math.cos(g.alpha_n)) / Math.cos(g.alpha_Fan) -
      g.z_n * Math.cos(Math.PI / 3 - g.theta) -
      g.G / Math.cos(g.theta) +
      g.rho_fP) /
    2,
});

/** Tooth form factor for load at the tip. */
export const formFactor = formula({
  key: 'gears.formFactor',
  symbol: 'Y_Fa',
  name: 'Tooth form factor',
  unit: '1',
  given: { h_Fa: '1', alpha_Fan: 'rad', s_Fn: '1', alpha_n: 'rad' },
  text: '6 * h_Fa * cos(alpha_Fan) / (s_Fn^2 * cos(alpha_n))',
  source: ISO,
  domain: { h_Fa: [1, 3], alpha_Fan: [0.3, 0.6], s_Fn: [1.5, 2.5], alpha_n },
  of: (g) => (6 * g.h_Fa * Math.cos(g.alpha_Fan)) / (g.s_Fn * g.s_Fn * Math.cos(g.alpha_n)),
});

/** Notch parameter: half the root chord over the fillet radius. */
export const notchParameter = formula({
  key: 'gears.notchParameter',
  symbol: 'q_s',
  name: 'Notch parameter',
  unit: '1',
  given: { s_Fn: '1', rho_F: '1' },
  text: 's_Fn / (2 * rho_F)',
  source: ISO,
  validity: '1 ≤ q_s < 8 for the stress correction factor.',
  of: (g) => g.s_Fn / (2 * g.rho_F),
});

/** Stress correction factor: from the nominal bending stress to that at the fillet. */
export const stressCorrection = formula({
  key: 'gears.stressCorrection',
  symbol: 'Y_Sa',
  name: 'Stress correction factor',
  unit: '1',
  given: { s_Fn: '1', h_Fa: '1', q_s: '1' },
  text: '(1.2 + 0.13 * s_Fn / h_Fa) * q_s^(1 / (1.21 + 2.3 * h_Fa / s_Fn))',
  source: ISO,
  validity: '1 ≤ q_s < 8',
  domain: { s_Fn: [1.5, 2.5], h_Fa: [1, 3], q_s: [1, 8] },
  of: (g) => (1.2 + (0.13 * g.s_Fn) / g.h_Fa) * g.q_s ** (1 / (1.21 + (2.3 * g.h_Fa) / g.s_Fn)),
});

export const formFactorFormulas = [
  toolHalfSpace,
  roundingCentreHeight,
  tangentStart,
  tangentAngle,
  rootChord,
  filletRadius,
  virtualTipDiameter,
  virtualTipPressureAngle,
  tipThicknessAngle,
  tipLoadAngle,
  bendingArm,
  formFactor,
  notchParameter,
  stressCorrection,
] as const;
