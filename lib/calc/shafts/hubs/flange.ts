// Flanges: friction of preloaded screws holds first (fasteners shelf); when it slips, screws bear in their holes and shear.
import { formula } from '../../formula';

/** Radius of a circle of screws, m. */
export const screwRadius = formula({
  key: 'shafts.screwRadius',
  symbol: 'r',
  name: 'Radius of the screws',
  unit: 'm',
  given: { D_s: 'm' },
  text: 'D_s / 2',
  source: 'Geometry',
  of: (g) => g.D_s / 2,
});

/** Torque that shears the screws of a flange, N m; A area of one in the joint, r their circle, s_n share that carries. */
export const flangeShearTorque = formula({
  key: 'shafts.flangeShearTorque',
  symbol: 'T_q',
  name: 'Torque that shears the screws of a flange',
  unit: 'N m',
  given: { s_n: '1', n: '1', A: 'm^2', tau_s: 'Pa', r: 'm' },
  text: 's_n * n * A * tau_s * r',
  source: 'Mean shear; a screw in a clearance hole carries only once it touches',
  domain: { s_n: [0.25, 1] },
  of: (g) => g.s_n * g.n * g.A * g.tau_s * g.r,
});

/** Torque at which screws press the holes of a flange to a limit, N m; d screw, t thickness of the softer part. */
export const flangeBearingTorque = formula({
  key: 'shafts.flangeBearingTorque',
  symbol: 'T_b',
  name: 'Torque that the holes of a flange bear',
  unit: 'N m',
  given: { s_n: '1', n: '1', p: 'Pa', d: 'm', t: 'm', r: 'm' },
  text: 's_n * n * p * d * t * r',
  source: 'Mean pressure over diameter times thickness; statics',
  domain: { s_n: [0.25, 1] },
  of: (g) => g.s_n * g.n * g.p * g.d * g.t * g.r,
});
