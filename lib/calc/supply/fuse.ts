// When a fuse opens, between the points of its time-current band.
import { formula } from '../formula';

const band = 'Straight line between points of the band, both axes logarithmic';

/** A current as a multiple of a fuse’s rating. */
export const fuseMultiple = formula({
  key: 'supply.fuseMultiple',
  symbol: 'x_f',
  name: 'Multiple of the fuse’s rating',
  unit: '1',
  given: { I: 'A', I_f: 'A' },
  text: 'I / I_f',
  source: 'Definition',
  of: (g) => g.I / g.I_f,
});

/** Time to open at a multiple of the rating, s, between the points (x_a, t_a) and (x_b, t_b). */
export const fuseTime = formula({
  key: 'supply.fuseTime',
  symbol: 't_f',
  name: 'Time to open',
  unit: 's',
  given: { x_f: '1', x_a: '1', t_a: 's', x_b: '1', t_b: 's' },
  text: 't_a * (t_b / t_a)^(log(x_f / x_a) / log(x_b / x_a))',
  source: band,
  validity: 'x_f between x_a and x_b.',
  domain: { x_f: [2, 3], x_a: [1.35, 2], x_b: [3, 6], t_a: [1, 100], t_b: [0.05, 1] },
  of: (g) => g.t_a * (g.t_b / g.t_a) ** (Math.log(g.x_f / g.x_a) / Math.log(g.x_b / g.x_a)),
});

/** Time to open beyond the last point of the band, s: no heat leaves the element, so that the square of the current times the time stays. */
export const fuseTimeShort = formula({
  key: 'supply.fuseTimeShort',
  symbol: 't_f',
  name: 'Time to open in a short circuit',
  unit: 's',
  given: { x_f: '1', x_a: '1', t_a: 's' },
  text: 't_a * (x_a / x_f)^2',
  source: 'Adiabatic heat balance of the element from the last point of its band',
  validity: 'x_f above x_a; the element gives some heat off at x_a, so that it opens rather sooner.',
  of: (g) => g.t_a * (g.x_a / g.x_f) ** 2,
});

/** Current that a fuse carries for a time without opening, A, between two points of the shortest times. */
export const fuseCarries = formula({
  key: 'supply.fuseCarries',
  symbol: 'I_car',
  name: 'Current that the fuse carries for a time',
  unit: 'A',
  given: { I_f: 'A', t: 's', x_a: '1', t_a: 's', x_b: '1', t_b: 's' },
  text: 'I_f * x_a * (x_b / x_a)^(log(t / t_a) / log(t_b / t_a))',
  source: band,
  validity: 't between t_b and t_a.',
  domain: { t: [2, 20], x_a: [1.35, 2], x_b: [3, 6], t_a: [30, 100], t_b: [0.05, 1] },
  of: (g) => g.I_f * g.x_a * (g.x_b / g.x_a) ** (Math.log(g.t / g.t_a) / Math.log(g.t_b / g.t_a)),
});

/** A multiple of a fuse’s rating as a current, A. */
export const fuseCurrent = formula({
  key: 'supply.fuseCurrent',
  symbol: 'I_x',
  name: 'Multiple of the fuse’s rating as a current',
  unit: 'A',
  given: { x_f: '1', I_f: 'A' },
  text: 'x_f * I_f',
  source: 'Definition',
  of: (g) => g.x_f * g.I_f,
});

/** Current of a dead short, A. */
export const shortCurrent = formula({
  key: 'supply.shortCurrent',
  symbol: 'I_sc',
  name: 'Current of a short circuit',
  unit: 'A',
  given: { U_oc: 'V', R_s: 'ohm' },
  text: 'U_oc / R_s',
  source: 'Ohm’s law; the cells’ own voltage falls further in a real short',
  of: (g) => g.U_oc / g.R_s,
});
