// One load (a force and a couple at a place) on a beam with two supports, by Macaulay's brackets. Loads add up.
// x to the right; forces positive upward, couples positive anticlockwise, moments positive where the beam sags.
import { formula } from '../../formula';

const statics = 'Statics of a beam on two supports';
const macaulay = 'Macaulay’s method; bracket ⟨x − a⟩ written max(x, a) − a';

/** Force of the left support on the beam, N. */
export const leftReaction = formula({
  key: 'shafts.leftReaction',
  symbol: 'R_A',
  name: 'Force of the left support',
  unit: 'N',
  given: { F: 'N', M_0: 'N m', a: 'm', x_A: 'm', x_B: 'm' },
  text: '(F * (a - x_B) + M_0) / (x_B - x_A)',
  source: statics,
  validity: 'x_B right of x_A.',
  domain: { x_A: [0, 4], x_B: [5, 10] },
  of: (g) => (g.F * (g.a - g.x_B) + g.M_0) / (g.x_B - g.x_A),
});

/** Force of the right support on the beam, N. */
export const rightReaction = formula({
  key: 'shafts.rightReaction',
  symbol: 'R_B',
  name: 'Force of the right support',
  unit: 'N',
  given: { F: 'N', M_0: 'N m', a: 'm', x_A: 'm', x_B: 'm' },
  text: '-(F * (a - x_A) + M_0) / (x_B - x_A)',
  source: statics,
  validity: 'x_B right of x_A.',
  domain: { x_A: [0, 4], x_B: [5, 10] },
  of: (g) => -(g.F * (g.a - g.x_A) + g.M_0) / (g.x_B - g.x_A),
});

/** Shear force just right of x, N: what the beam left of it pushes upward with. */
export const shearForce = formula({
  key: 'shafts.shearForce',
  symbol: 'V',
  name: 'Shear force in a beam',
  unit: 'N',
  given: { R_A: 'N', x_A: 'm', R_B: 'N', x_B: 'm', F: 'N', a: 'm', x: 'm' },
  text: 'R_A * (x >= x_A ? 1 : 0) + R_B * (x >= x_B ? 1 : 0) + F * (x >= a ? 1 : 0)',
  source: statics,
  of: (g) => (g.x >= g.x_A ? g.R_A : 0) + (g.x >= g.x_B ? g.R_B : 0) + (g.x >= g.a ? g.F : 0),
});

/** Bending moment just right of x, N m. */
export const bendingMoment = formula({
  key: 'shafts.bendingMoment',
  symbol: 'M_x',
  name: 'Bending moment in a beam',
  unit: 'N m',
  given: { R_A: 'N', x_A: 'm', R_B: 'N', x_B: 'm', F: 'N', M_0: 'N m', a: 'm', x: 'm' },
  text: 'R_A * (max(x, x_A) - x_A) + R_B * (max(x, x_B) - x_B) + F * (max(x, a) - a) - M_0 * (x >= a ? 1 : 0)',
  source: macaulay,
  of: (g) =>
    g.R_A * (Math.max(g.x, g.x_A) - g.x_A) +
    g.R_B * (Math.max(g.x, g.x_B) - g.x_B) +
    g.F * (Math.max(g.x, g.a) - g.a) -
    (g.x >= g.a ? g.M_0 : 0),
});

/** Bow of the beam at x before its supports are brought level, m. */
export const freeBow = formula({
  key: 'shafts.freeBow',
  symbol: 'w',
  name: 'Bow of a beam, supports not yet level',
  unit: 'm',
  given: { R_A: 'N', x_A: 'm', R_B: 'N', x_B: 'm', F: 'N', M_0: 'N m', a: 'm', x: 'm', E: 'Pa', I: 'm^4' },
  text: '(R_A * (max(x, x_A) - x_A)^3 + R_B * (max(x, x_B) - x_B)^3 + F * (max(x, a) - a)^3 - 3 * M_0 * (max(x, a) - a)^2) / (6 * E * I)',
  source: macaulay,
  validity: 'One section along the beam; deflection by shear left out.',
  of: (g) =>
    (g.R_A * (Math.max(g.x, g.x_A) - g.x_A) ** 3 +
      g.R_B * (Math.max(g.x, g.x_B) - g.x_B) ** 3 +
      g.F * (Math.max(g.x, g.a) - g.a) ** 3 -
      3 * g.M_0 * (Math.max(g.x, g.a) - g.a) ** 2) /
    (6 * g.E * g.I),
});

/** Slope of that bow at x, rad. */
export const freeSlope = formula({
  key: 'shafts.freeSlope',
  symbol: 'theta_w',
  name: 'Slope of a beam, supports not yet level',
  unit: 'rad',
  given: { R_A: 'N', x_A: 'm', R_B: 'N', x_B: 'm', F: 'N', M_0: 'N m', a: 'm', x: 'm', E: 'Pa', I: 'm^4' },
  text: '(R_A * (max(x, x_A) - x_A)^2 + R_B * (max(x, x_B) - x_B)^2 + F * (max(x, a) - a)^2 - 2 * M_0 * (max(x, a) - a)) / (2 * E * I)',
  source: macaulay,
  validity: 'One section along the beam; deflection by shear left out.',
  of: (g) =>
    (g.R_A * (Math.max(g.x, g.x_A) - g.x_A) ** 2 +
      g.R_B * (Math.max(g.x, g.x_B) - g.x_B) ** 2 +
      g.F * (Math.max(g.x, g.a) - g.a) ** 2 -
      2 * g.M_0 * (Math.max(g.x, g.a) - g.a)) /
    (2 * g.E * g.I),
});

/** Deflection at x, m, positive upward: the bow w with the line through its supports taken off. */
export const deflection = formula({
  key: 'shafts.deflection',
  symbol: 'y',
  name: 'Deflection of a beam',
  unit: 'm',
  given: { w: 'm', w_A: 'm', w_B: 'm', x: 'm', x_A: 'm', x_B: 'm' },
  text: 'w - w_A - (w_B - w_A) * (x - x_A) / (x_B - x_A)',
  source: 'Deflection is zero at both supports',
  domain: { x_A: [0, 4], x_B: [5, 10] },
  of: (g) => g.w - g.w_A - ((g.w_B - g.w_A) * (g.x - g.x_A)) / (g.x_B - g.x_A),
});

/** Slope at x, rad, positive where the beam rises to the right. */
export const slope = formula({
  key: 'shafts.slope',
  symbol: 'theta',
  name: 'Slope of a beam',
  unit: 'rad',
  given: { theta_w: 'rad', w_A: 'm', w_B: 'm', x_A: 'm', x_B: 'm' },
  text: 'theta_w - (w_B - w_A) / (x_B - x_A)',
  source: 'Deflection is zero at both supports',
  domain: { x_A: [0, 4], x_B: [5, 10] },
  of: (g) => g.theta_w - (g.w_B - g.w_A) / (g.x_B - g.x_A),
});
