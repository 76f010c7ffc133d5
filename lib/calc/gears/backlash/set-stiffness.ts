// How stiff a planetary set is at the member that gives its output, the others held.
import { formula } from '../../formula';

const STATICS = 'Springs of the two meshes of each planet; energy of a planet in balance';

/** Stiffness (N/m) of a mesh along its working pitch circle; c_gamma (N/m²) is that along the line of action per width b (m). */
export const meshPitchStiffness = formula({
  key: 'gears.meshPitchStiffness',
  symbol: 'c_w',
  name: 'Stiffness of a mesh along its pitch circle',
  unit: 'N/m',
  given: { c_gamma: 'N/m^2', b: 'm', alpha_wt: 'rad' },
  text: 'c_gamma * b * cos(alpha_wt)^2',
  source: 'Statics: force and give both turned by the pressure angle',
  domain: { c_gamma: [1e8, 2e10], b: [5e-3, 0.05], alpha_wt: [0.24, 0.5] },
  of: (g) => g.c_gamma * g.b * Math.cos(g.alpha_wt) ** 2,
});

/** Torsional stiffness (N m/rad) of a planet carrier with sun and ring held: N planets at a (m), c_s and c_r (N/m) their meshes. */
export const carrierStiffness = formula({
  key: 'gears.carrierStiffness',
  symbol: 'k_set',
  name: 'Torsional stiffness of a planetary set at its carrier',
  unit: 'N m/rad',
  given: { N: '1', a: 'm', c_s: 'N/m', c_r: 'N/m' },
  text: '4 * N * a^2 * c_s * c_r / (c_s + c_r)',
  source: STATICS,
  validity: 'All planets share the load; pins and their bearings taken as stiff.',
  domain: { N: [3, 6], c_s: [1e6, 1e8], c_r: [1e6, 1e8] },
  of: (g) => (4 * g.N * g.a ** 2 * g.c_s * g.c_r) / (g.c_s + g.c_r),
});

/** Torsional stiffness (N m/rad) of the ring with sun and carrier held; d_w (m) the ring's pitch circle. */
export const ringStiffness = formula({
  key: 'gears.ringStiffness',
  symbol: 'k_set',
  name: 'Torsional stiffness of a planetary set at its ring',
  unit: 'N m/rad',
  given: { N: '1', d_w: 'm', c_s: 'N/m', c_r: 'N/m' },
  text: 'N * (d_w / 2)^2 * c_s * c_r / (c_s + c_r)',
  source: STATICS,
  validity: 'All planets share the load; pins and their bearings taken as stiff.',
  domain: { N: [3, 6], c_s: [1e6, 1e8], c_r: [1e6, 1e8] },
  of: (g) => (g.N * (g.d_w / 2) ** 2 * g.c_s * g.c_r) / (g.c_s + g.c_r),
});

/** Torsional stiffness (N m/rad) of a belt stage once its slack strand hangs: one strand of free length l_s (m) pulls. */
export const slackBeltStiffness = formula({
  key: 'gears.slackBeltStiffness',
  symbol: 'k_belt',
  name: 'Torsional stiffness of a belt stage, one strand slack',
  unit: 'N m/rad',
  given: { c_sp: 'N', l_s: 'm', d: 'm' },
  text: 'c_sp / l_s * (d / 2)^2',
  source: 'Statics; half of that with both strands taut',
  of: (g) => (g.c_sp / g.l_s) * (g.d / 2) ** 2,
});

export const setStiffnessFormulas = [
  meshPitchStiffness,
  carrierStiffness,
  ringStiffness,
  slackBeltStiffness,
] as const;
