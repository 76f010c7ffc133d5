// Forces of a mesh or a belt in the two planes of a shaft, and both planes taken together again.
// x along the shaft, y and z square to it; angles run from y towards z. A force on a toothed part acts at the point of
// contact, which lies in the direction psi from the part’s own axis. Plane y holds x and y, plane z holds x and z.
import { formula } from '../../formula';

const statics = 'Statics; x along the shaft, angles from y towards z';
const vectors = 'Sum of vectors at right angles';
const direction = { psi: [-3.1, 3.1] } as const;

/** Force of a mesh in plane y, N. F_r positive towards the part’s own axis, F_t positive where it turns the part from y to z. */
export const forceInPlaneY = formula({
  key: 'shafts.forceInPlaneY',
  symbol: 'F_y',
  name: 'Force of a mesh in plane y',
  unit: 'N',
  given: { F_r: 'N', F_t: 'N', psi: 'rad' },
  text: '-F_r * cos(psi) - F_t * sin(psi)',
  source: statics,
  domain: direction,
  of: (g) => -g.F_r * Math.cos(g.psi) - g.F_t * Math.sin(g.psi),
});

/** Force of a mesh in plane z, N; signs as in plane y. */
export const forceInPlaneZ = formula({
  key: 'shafts.forceInPlaneZ',
  symbol: 'F_z',
  name: 'Force of a mesh in plane z',
  unit: 'N',
  given: { F_r: 'N', F_t: 'N', psi: 'rad' },
  text: '-F_r * sin(psi) + F_t * cos(psi)',
  source: statics,
  domain: direction,
  of: (g) => -g.F_r * Math.sin(g.psi) + g.F_t * Math.cos(g.psi),
});

/** Couple that an axial force (N, positive along x) at a radius d/2 puts on the shaft in plane y, N m, anticlockwise. */
export const axialCoupleY = formula({
  key: 'shafts.axialCoupleY',
  symbol: 'M_0y',
  name: 'Couple of an axial force in plane y',
  unit: 'N m',
  given: { F_a: 'N', d: 'm', psi: 'rad' },
  text: '-F_a * d / 2 * cos(psi)',
  source: statics,
  domain: direction,
  of: (g) => ((-g.F_a * g.d) / 2) * Math.cos(g.psi),
});

/** The same in plane z, N m. */
export const axialCoupleZ = formula({
  key: 'shafts.axialCoupleZ',
  symbol: 'M_0z',
  name: 'Couple of an axial force in plane z',
  unit: 'N m',
  given: { F_a: 'N', d: 'm', psi: 'rad' },
  text: '-F_a * d / 2 * sin(psi)',
  source: statics,
  domain: direction,
  of: (g) => ((-g.F_a * g.d) / 2) * Math.sin(g.psi),
});

/** Radial force of both planes, N. */
export const resultantForce = formula({
  key: 'shafts.resultantForce',
  symbol: 'F_rad',
  name: 'Radial force of both planes',
  unit: 'N',
  given: { F_y: 'N', F_z: 'N' },
  text: 'sqrt(F_y^2 + F_z^2)',
  source: vectors,
  of: (g) => Math.sqrt(g.F_y ** 2 + g.F_z ** 2),
});

/** Deflection of both planes, m. */
export const resultantDeflection = formula({
  key: 'shafts.resultantDeflection',
  symbol: 'y_res',
  name: 'Deflection of both planes',
  unit: 'm',
  given: { y_y: 'm', y_z: 'm' },
  text: 'sqrt(y_y^2 + y_z^2)',
  source: vectors,
  of: (g) => Math.sqrt(g.y_y ** 2 + g.y_z ** 2),
});

/** Slope of both planes, rad: small, so that they add as vectors. */
export const resultantSlope = formula({
  key: 'shafts.resultantSlope',
  symbol: 'theta_res',
  name: 'Slope of both planes',
  unit: 'rad',
  given: { theta_y: 'rad', theta_z: 'rad' },
  text: 'sqrt(theta_y^2 + theta_z^2)',
  source: vectors,
  of: (g) => Math.sqrt(g.theta_y ** 2 + g.theta_z ** 2),
});

export const planesFormulas = [
  forceInPlaneY,
  forceInPlaneZ,
  axialCoupleY,
  axialCoupleZ,
  resultantForce,
  resultantDeflection,
  resultantSlope,
] as const;
