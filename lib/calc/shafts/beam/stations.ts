// A beam on two supports worked from station to station, left to right: every load and support is a station. The way of
// a worked sheet; `beam.ts` answers at any place. Signs as in `load.ts`.
import { formula } from '../../formula';

const statics = 'Statics of a beam on two supports';
const areas = 'Moment is the area under the shear; statics';
const integrals =
  'Slope and deflection are the first and second integral of M/(E I) over a stretch of even shear';
const stretch = { x_before: [0, 4], x: [5, 10] } as const;

/** Turning moment of all loads about support A, N m, one load more. */
export const loadMoment = formula({
  key: 'shafts.loadMoment',
  symbol: 'M_A',
  name: 'Moment of the loads about support A',
  unit: 'N m',
  given: { M_before: 'N m', F: 'N', a: 'm', x_A: 'm', M_0: 'N m' },
  text: 'M_before + F * (a - x_A) + M_0',
  source: statics,
  of: (g) => g.M_before + g.F * (g.a - g.x_A) + g.M_0,
});

/** Sum of forces, N, one force more. */
export const loadSum = formula({
  key: 'shafts.loadSum',
  symbol: 'F_sum',
  name: 'Sum of forces',
  unit: 'N',
  given: { F_before: 'N', F: 'N' },
  text: 'F_before + F',
  source: statics,
  of: (g) => g.F_before + g.F,
});

/** Force of support B on the beam, N. */
export const supportB = formula({
  key: 'shafts.supportB',
  symbol: 'R_B',
  name: 'Force of support B on the shaft',
  unit: 'N',
  given: { M_A: 'N m', x_A: 'm', x_B: 'm' },
  text: '-M_A / (x_B - x_A)',
  source: statics,
  validity: 'x_B not at x_A.',
  domain: { x_A: [0, 4], x_B: [5, 10] },
  of: (g) => -g.M_A / (g.x_B - g.x_A),
});

/** Force of support A on the beam, N. */
export const supportA = formula({
  key: 'shafts.supportA',
  symbol: 'R_A',
  name: 'Force of support A on the shaft',
  unit: 'N',
  given: { F_sum: 'N', R_B: 'N' },
  text: '-F_sum - R_B',
  source: statics,
  of: (g) => -g.F_sum - g.R_B,
});

/** Bending moment at x, N m, from that at the station before it; M_0 the couple that acts at x, 0 just left of it. */
export const nextMoment = formula({
  key: 'shafts.nextMoment',
  symbol: 'M_x',
  name: 'Bending moment at the next station',
  unit: 'N m',
  given: { M_before: 'N m', V: 'N', x: 'm', x_before: 'm', M_0: 'N m' },
  text: 'M_before + V * (x - x_before) - M_0',
  source: areas,
  of: (g) => g.M_before + g.V * (g.x - g.x_before) - g.M_0,
});

/** Slope at x, rad, supports not yet level; M_before just right of the station before, V the shear between. */
export const nextSlope = formula({
  key: 'shafts.nextSlope',
  symbol: 'theta_w',
  name: 'Slope at the next station, supports not yet level',
  unit: 'rad',
  given: { theta_before: 'rad', M_before: 'N m', V: 'N', x: 'm', x_before: 'm', E: 'Pa', I: 'm^4' },
  text: 'theta_before + (M_before * (x - x_before) + V * (x - x_before)^2 / 2) / (E * I)',
  source: integrals,
  validity: 'One section along the shaft; deflection by shear left out.',
  domain: stretch,
  of: (g) => {
    const s = g.x - g.x_before;
    return g.theta_before + (g.M_before * s + (g.V * s ** 2) / 2) / (g.E * g.I);
  },
});

/** Bow at x, m, supports not yet level. */
export const nextBow = formula({
  key: 'shafts.nextBow',
  symbol: 'w',
  name: 'Bow at the next station, supports not yet level',
  unit: 'm',
  given: {
    w_before: 'm',
    theta_before: 'rad',
    M_before: 'N m',
    V: 'N',
    x: 'm',
    x_before: 'm',
    E: 'Pa',
    I: 'm^4',
  },
  text: 'w_before + theta_before * (x - x_before) + (M_before * (x - x_before)^2 / 2 + V * (x - x_before)^3 / 6) / (E * I)',
  source: integrals,
  validity: 'One section along the shaft; deflection by shear left out.',
  domain: stretch,
  of: (g) => {
    const s = g.x - g.x_before;
    return g.w_before + g.theta_before * s + ((g.M_before * s ** 2) / 2 + (g.V * s ** 3) / 6) / (g.E * g.I);
  },
});

export const stationFormulas = [
  loadMoment,
  loadSum,
  supportB,
  supportA,
  nextMoment,
  nextSlope,
  nextBow,
] as const;
