// Forces of a mesh, a belt or an arm in the two planes of a shaft, and both planes taken together again.
// x along the shaft, y and z square to it; angles run from y towards z. phi_a is the direction of the line of centres;
// the sign s_m says whether the other axis lies that way (1) or the other (-1). Plane y holds x and y, plane z x and z.
import { formula } from '../../formula';

const statics = 'Statics; x along the shaft, angles from y towards z';
const vectors = 'Sum of vectors at right angles';
const placed = { phi_a: [-3.1, 3.1], s_m: [-1, 1], s_t: [-1, 1] } as const;
const pushed = { phi_a: [-3.1, 3.1], s_a: [-1, 1] } as const;

/**
 * Force of a mesh in plane y, N. F_r positive away from the other axis. s_t: 1 where F_t, acting on the side of the other
 * axis, turns the part from y to z; -1 where it turns it back, or turns it from beyond its own centre; 0 where it does
 * not push sideways.
 */
export const forceInPlaneY = formula({
  key: 'shafts.forceInPlaneY',
  symbol: 'F_y',
  name: 'Force of a mesh in plane y',
  unit: 'N',
  given: { F_r: 'N', F_t: 'N', phi_a: 'rad', s_m: '1', s_t: '1' },
  text: '-s_m * (F_r * cos(phi_a) + s_t * F_t * sin(phi_a))',
  source: statics,
  domain: placed,
  of: (g) => -g.s_m * (g.F_r * Math.cos(g.phi_a) + g.s_t * g.F_t * Math.sin(g.phi_a)),
});

/** Force of a mesh in plane z, N; signs as in plane y. */
export const forceInPlaneZ = formula({
  key: 'shafts.forceInPlaneZ',
  symbol: 'F_z',
  name: 'Force of a mesh in plane z',
  unit: 'N',
  given: { F_r: 'N', F_t: 'N', phi_a: 'rad', s_m: '1', s_t: '1' },
  text: 's_m * (s_t * F_t * cos(phi_a) - F_r * sin(phi_a))',
  source: statics,
  domain: placed,
  of: (g) => g.s_m * (g.s_t * g.F_t * Math.cos(g.phi_a) - g.F_r * Math.sin(g.phi_a)),
});

/**
 * Couple of an axial force at a circle of diameter d in plane y, N m, anticlockwise. s_a: 1 where a force along x acts
 * on the side of phi_a.
 */
export const axialCoupleY = formula({
  key: 'shafts.axialCoupleY',
  symbol: 'M_0y',
  name: 'Couple of an axial force in plane y',
  unit: 'N m',
  given: { F_a: 'N', d: 'm', phi_a: 'rad', s_a: '1' },
  text: '-s_a * F_a * d / 2 * cos(phi_a)',
  source: statics,
  domain: pushed,
  of: (g) => ((-g.s_a * g.F_a * g.d) / 2) * Math.cos(g.phi_a),
});

/** The same in plane z, N m. */
export const axialCoupleZ = formula({
  key: 'shafts.axialCoupleZ',
  symbol: 'M_0z',
  name: 'Couple of an axial force in plane z',
  unit: 'N m',
  given: { F_a: 'N', d: 'm', phi_a: 'rad', s_a: '1' },
  text: '-s_a * F_a * d / 2 * sin(phi_a)',
  source: statics,
  domain: pushed,
  of: (g) => ((-g.s_a * g.F_a * g.d) / 2) * Math.sin(g.phi_a),
});

/** Weight of what hangs on the output shaft, N. */
export const hangingWeight = formula({
  key: 'shafts.hangingWeight',
  symbol: 'W',
  name: 'Weight of arm and tip mass',
  unit: 'N',
  given: { g_n: 'm/s^2', m_arm: 'kg', m_tip: 'kg' },
  text: 'g_n * (m_arm + m_tip)',
  source: 'Statics; g_n = 9.80665 m/s² (ISO 80000-3)',
  of: (g) => g.g_n * (g.m_arm + g.m_tip),
});

/** Force square to the output shaft where its torque is a force at the end of an arm, weights added to it, N. */
export const armForce = formula({
  key: 'shafts.armForce',
  symbol: 'F_arm',
  name: 'Force of the arm on its shaft',
  unit: 'N',
  given: { T: 'N m', l: 'm', W: 'N' },
  text: 'T / l + W',
  source: 'Statics: the whole torque taken as one force at the tip, the weight in its direction',
  of: (g) => g.T / g.l + g.W,
});

/** Part of a force in a plane where it lies in one line with another, N; s_f -1 against it. */
export const forceInLine = formula({
  key: 'shafts.forceInLine',
  symbol: 'F_line',
  name: 'Force in one line with another, in a plane',
  unit: 'N',
  given: { s_f: '1', F_arm: 'N', F_plane: 'N', F_rad: 'N' },
  text: 's_f * F_arm * F_plane / F_rad',
  source: 'Similar triangles',
  domain: { s_f: [-1, 1] },
  of: (g) => (g.s_f * g.F_arm * g.F_plane) / g.F_rad,
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
  hangingWeight,
  armForce,
  forceInLine,
  resultantForce,
  resultantDeflection,
  resultantSlope,
] as const;
