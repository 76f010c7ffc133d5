// Printed splines: the teeth bear on their flanks (positive.ts) and may shear at their roots.
import { formula } from '../../formula';

/** Width of a spline tooth on its reference circle, m, where tooth and space are equal. */
export const splineToothWidth = formula({
  key: 'shafts.splineToothWidth',
  symbol: 'b_t',
  name: 'Width of a spline tooth',
  unit: 'm',
  given: { d_m: 'm', z: '1' },
  text: 'pi * d_m / (2 * z)',
  source: 'Geometry: tooth and space equal on the reference circle, as in DIN 5480 and ISO 4156',
  of: (g) => (Math.PI * g.d_m) / (2 * g.z),
});

/** Torque that shears the teeth of a spline off, N m; b_t width of a tooth, d_m mean diameter, s_z share that carries. */
export const splineShearTorque = formula({
  key: 'shafts.splineShearTorque',
  symbol: 'T_spl',
  name: 'Torque that shears the teeth of a spline',
  unit: 'N m',
  given: { s_z: '1', z: '1', b_t: 'm', l: 'm', tau_m: 'Pa', d_m: 'm' },
  text: 's_z * z * b_t * l * tau_m * d_m / 2',
  source: 'Mean shear over the width of the carrying teeth; statics',
  domain: { s_z: [0.25, 1] },
  of: (g) => (g.s_z * g.z * g.b_t * g.l * g.tau_m * g.d_m) / 2,
});
