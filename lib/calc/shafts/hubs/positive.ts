// Hubs that hold by shape: parallel key, flat, spline.
import { formula } from '../../formula';

/** Torque at which a key shears, N m; tau_k its shear strength. */
export const keyShearTorque = formula({
  key: 'shafts.keyShearTorque',
  symbol: 'T_key',
  name: 'Torque that shears a key',
  unit: 'N m',
  given: { d: 'm', b: 'm', l: 'm', tau_k: 'Pa' },
  text: 'd / 2 * b * l * tau_k',
  source: 'Statics; Shigley ch. 7: shear strength 0.577 of yield',
  of: (g) => (g.d / 2) * g.b * g.l * g.tau_k,
});

/** Length of a key that carries, m: beyond 1.3 diameters the far end is idle. */
export const keyLength = formula({
  key: 'shafts.keyLength',
  symbol: 'l_k',
  name: 'Carrying length of a key',
  unit: 'm',
  given: { l: 'm', d: 'm' },
  text: 'min(l, 1.3 * d)',
  source: 'DIN 6892 (from memory)',
  of: (g) => Math.min(g.l, 1.3 * g.d),
});

/** Torque at which the side of a keyway in the hub reaches a pressure, N m; h height of the key, t_1 depth in the shaft. */
export const keyPressureTorque = formula({
  key: 'shafts.keyPressureTorque',
  symbol: 'T_key',
  name: 'Torque that a keyway bears',
  unit: 'N m',
  given: { d: 'm', h: 'm', t_1: 'm', l: 'm', p: 'Pa' },
  text: 'd / 2 * (h - t_1) * l * p',
  source: 'DIN 6892, method C form (from memory)',
  validity: 'One key; l without rounded ends, at most 1.3 d.',
  domain: { h: [5, 8], t_1: [2, 4] },
  of: (g) => (g.d / 2) * (g.h - g.t_1) * g.l * g.p,
});

/** Torque at which the side of the keyway in the shaft reaches a pressure, N m; its edge is taken as bevelled by 0.1 t_1. */
export const keyseatTorque = formula({
  key: 'shafts.keyseatTorque',
  symbol: 'T_key',
  name: 'Torque that a keyseat in the shaft bears',
  unit: 'N m',
  given: { d: 'm', t_1: 'm', l: 'm', p: 'Pa' },
  text: '(d - t_1) / 2 * 0.9 * t_1 * l * p',
  source: 'Statics: the force acts in the middle of the depth; bevels of key and seat from judgement',
  domain: { d: [8, 12], t_1: [1, 3] },
  of: (g) => ((g.d - g.t_1) / 2) * 0.9 * g.t_1 * g.l * g.p,
});

/** Pressure on the side of a keyway in the hub under a torque, Pa: the other way of `keyPressureTorque`. */
export const keyPressure = formula({
  key: 'shafts.keyPressure',
  symbol: 'p_key',
  name: 'Pressure in a keyway',
  unit: 'Pa',
  given: { T: 'N m', d: 'm', h: 'm', t_1: 'm', l: 'm' },
  text: '2 * T / (d * (h - t_1) * l)',
  source: 'DIN 6892, method C form (from memory)',
  validity: 'One key; l without rounded ends, at most 1.3 d.',
  domain: { h: [5, 8], t_1: [2, 4] },
  of: (g) => (2 * g.T) / (g.d * (g.h - g.t_1) * g.l),
});

/** Width of a flat ground s deep into a shaft, m. */
export const flatWidth = formula({
  key: 'shafts.flatWidth',
  symbol: 'b_f',
  name: 'Width of a flat',
  unit: 'm',
  given: { s: 'm', d: 'm' },
  text: '2 * sqrt(s * (d - s))',
  source: 'Geometry',
  domain: { s: [0.1, 2], d: [4, 10] },
  of: (g) => 2 * Math.sqrt(g.s * (g.d - g.s)),
});

/** Torque at which the edge of a flat reaches a pressure, N m; l length in the hub. */
export const flatTorque = formula({
  key: 'shafts.flatTorque',
  symbol: 'T_flat',
  name: 'Torque that a flat bears',
  unit: 'N m',
  given: { p: 'Pa', l: 'm', b_f: 'm' },
  text: 'p * l * b_f^2 / 12',
  source:
    'Statics, derived: pressure rises from the middle of the flat to its edge, the other half lifts off',
  of: (g) => (g.p * g.l * g.b_f ** 2) / 12,
});

/** Torque that a spline of z teeth bears, N m; d_m mean diameter, h_b bearing height of a tooth, s_z share of teeth that carry. */
export const splineTorque = formula({
  key: 'shafts.splineTorque',
  symbol: 'T_spl',
  name: 'Torque that a spline bears',
  unit: 'N m',
  given: { s_z: '1', z: '1', p: 'Pa', h_b: 'm', l: 'm', d_m: 'm' },
  text: 's_z * z * p * h_b * l * d_m / 2',
  source:
    'Roloff, Matek, Maschinenelemente, profile shafts (from memory): s_z 0.75 to 0.9; printed splines from judgement lower',
  of: (g) => (g.s_z * g.z * g.p * g.h_b * g.l * g.d_m) / 2,
});
