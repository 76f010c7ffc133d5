// How a round shaft gives: second moments of its section, twist, and the speed at which it whips.
import { formula } from '../formula';

/** Second moment of area of a round section in bending, m⁴; d_i the bore, 0 when solid. */
export const areaMoment = formula({
  key: 'shafts.areaMoment',
  symbol: 'I',
  name: 'Second moment of area of a shaft',
  unit: 'm^4',
  given: { d: 'm', d_i: 'm' },
  text: 'pi / 64 * (d^4 - d_i^4)',
  source: 'Geometry',
  validity: 'd_i below d.',
  domain: { d: [5, 10], d_i: [0, 4] },
  of: (g) => (Math.PI / 64) * (g.d ** 4 - g.d_i ** 4),
});

/** Mass of a round shaft per length, kg/m. */
export const massPerLength = formula({
  key: 'shafts.massPerLength',
  symbol: 'm_l',
  name: 'Mass of a shaft per length',
  unit: 'kg/m',
  given: { rho: 'kg/m^3', d: 'm', d_i: 'm' },
  text: 'pi / 4 * rho * (d^2 - d_i^2)',
  source: 'Geometry',
  domain: { d: [5, 10], d_i: [0, 4] },
  of: (g) => (Math.PI / 4) * g.rho * (g.d ** 2 - g.d_i ** 2),
});

/** Mass of a length of shaft, kg. */
export const shaftMass = formula({
  key: 'shafts.shaftMass',
  symbol: 'm',
  name: 'Mass of a shaft',
  unit: 'kg',
  given: { m_l: 'kg/m', l: 'm' },
  text: 'm_l * l',
  source: 'Definition',
  of: (g) => g.m_l * g.l,
});

/** How far a shaft reaches beyond its left support, m; x_1 and x_2 the places of its members. */
export const overhangLeft = formula({
  key: 'shafts.overhangLeft',
  symbol: 'c_A',
  name: 'Overhang beyond support A',
  unit: 'm',
  given: { x_A: 'm', x_1: 'm', x_2: 'm' },
  text: 'x_A - min(x_A, x_1, x_2)',
  source: 'Geometry',
  domain: { x_1: [-5, 15], x_2: [-5, 15] },
  of: (g) => g.x_A - Math.min(g.x_A, g.x_1, g.x_2),
});

/** The same beyond its right support, m. */
export const overhangRight = formula({
  key: 'shafts.overhangRight',
  symbol: 'c_B',
  name: 'Overhang beyond support B',
  unit: 'm',
  given: { x_B: 'm', x_1: 'm', x_2: 'm' },
  text: 'max(x_B, x_1, x_2) - x_B',
  source: 'Geometry',
  domain: { x_1: [-5, 15], x_2: [-5, 15] },
  of: (g) => Math.max(g.x_B, g.x_1, g.x_2) - g.x_B,
});

/** Length of a shaft between the outermost of its supports and members, m. */
export const shaftLength = formula({
  key: 'shafts.shaftLength',
  symbol: 'l_s',
  name: 'Length of a shaft',
  unit: 'm',
  given: { c_A: 'm', l: 'm', c_B: 'm' },
  text: 'c_A + l + c_B',
  source: 'Geometry',
  validity: 'Ends beyond the middles of bearings and gears are not in it.',
  of: (g) => g.c_A + g.l + g.c_B,
});

/** Mass of a gear or pulley as a solid disc, kg. */
export const discMass = formula({
  key: 'shafts.discMass',
  symbol: 'm_g',
  name: 'Mass of a gear as a solid disc',
  unit: 'kg',
  given: { rho: 'kg/m^3', d: 'm', b: 'm' },
  text: 'pi / 4 * rho * d^2 * b',
  source: 'Geometry',
  validity: 'Heavier than a gear with a bore and a web; hubs left out.',
  of: (g) => (Math.PI / 4) * g.rho * g.d ** 2 * g.b,
});

/** Twist of one step of a round shaft, rad; steps in a row add. */
export const twist = formula({
  key: 'shafts.twist',
  symbol: 'theta_t',
  name: 'Twist of a shaft',
  unit: 'rad',
  given: { T: 'N m', l: 'm', G: 'Pa', d: 'm', d_i: 'm' },
  text: '32 * T * l / (pi * G * (d^4 - d_i^4))',
  source: 'Strength of materials, round section',
  domain: { d: [5, 10], d_i: [0, 4] },
  of: (g) => (32 * g.T * g.l) / (Math.PI * g.G * (g.d ** 4 - g.d_i ** 4)),
});

/** Torsional stiffness of one step of a round shaft, N m/rad. */
export const torsionalStiffness = formula({
  key: 'shafts.torsionalStiffness',
  symbol: 'c_t',
  name: 'Torsional stiffness of a shaft',
  unit: 'N m',
  given: { l: 'm', G: 'Pa', d: 'm', d_i: 'm' },
  text: 'pi * G * (d^4 - d_i^4) / (32 * l)',
  source: 'Strength of materials, round section; unit N m per radian',
  domain: { d: [5, 10], d_i: [0, 4] },
  of: (g) => (Math.PI * g.G * (g.d ** 4 - g.d_i ** 4)) / (32 * g.l),
});

/** Shear modulus of an isotropic material, Pa. */
export const shearModulus = formula({
  key: 'shafts.shearModulus',
  symbol: 'G',
  name: 'Shear modulus',
  unit: 'Pa',
  given: { E: 'Pa', nu: '1' },
  text: 'E / (2 * (1 + nu))',
  source: 'Elasticity, isotropic material',
  validity: 'Isotropic: metals. A printed part gives more across its layers.',
  domain: { nu: [0.2, 0.45] },
  of: (g) => g.E / (2 * (1 + g.nu)),
});

/** Speed at which a shaft carrying one mass whips, rad/s; y_w the deflection under the mass’s own weight, m. */
export const criticalSpeed = formula({
  key: 'shafts.criticalSpeed',
  symbol: 'omega_c',
  name: 'First critical speed of a shaft with one mass',
  unit: 'rad/s',
  given: { g_n: 'm/s^2', y_w: 'm' },
  text: 'sqrt(g_n / y_w)',
  source: 'Rayleigh; Shigley ch. 7 (from memory)',
  validity: 'Stiff bearings, shaft light beside the mass.',
  of: (g) => Math.sqrt(g.g_n / g.y_w),
});
