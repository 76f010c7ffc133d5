// Life of a rolling bearing: rating life, the time it lasts, the rating a duty asks for, and reliability.
import { formula } from '../formula';

/** Rating life in revolutions that 90 % of ball bearings reach; C and P in N. */
export const ratingLife = formula({
  key: 'bearings.ratingLife',
  symbol: 'L_10',
  name: 'Rating life in revolutions',
  unit: '1',
  given: { C: 'N', P: 'N' },
  text: '1e6 * (C / P)^3',
  source: 'ISO 281:2007, 5.3 (from memory)',
  validity:
    'Ball bearings, P at most C/2, aligned, clean and lubricated. A printed seat that creeps or tilts is outside it.',
  of: (g) => 1e6 * (g.C / g.P) ** 3,
});

/** Time in which a bearing turning at a steady speed makes its revolutions, s. */
export const lifeTime = formula({
  key: 'bearings.lifeTime',
  symbol: 't_L',
  name: 'Time a bearing lasts',
  unit: 's',
  given: { L: '1', omega: 'rad/s' },
  text: '2 * pi * L / omega',
  source: 'Kinematics; L_10h = 1e6 (C/P)³/(60 n) in ISO 281:2007, 5.3 (from memory)',
  of: (g) => (2 * Math.PI * g.L) / g.omega,
});

/** Dynamic rating that makes a bearing last a time at a load and speed, N: the other way of `ratingLife`. */
export const requiredRating = formula({
  key: 'bearings.requiredRating',
  symbol: 'C_req',
  name: 'Dynamic rating needed',
  unit: 'N',
  given: { P: 'N', omega: 'rad/s', t_L: 's' },
  text: 'P * cbrt(omega * t_L / (2 * pi * 1e6))',
  source: 'ISO 281:2007, 5.3, inverted (from memory)',
  validity: 'Ball bearings.',
  domain: { omega: [1, 600], t_L: [1e5, 1e8] },
  of: (g) => g.P * Math.cbrt((g.omega * g.t_L) / (2 * Math.PI * 1e6)),
});

/** Steady load under which a bearing of rating C lasts N revolutions, N: the life a duty asks for, as a load. */
export const loadForLife = formula({
  key: 'bearings.loadForLife',
  symbol: 'P_N',
  name: 'Load that lasts a number of revolutions',
  unit: 'N',
  given: { C: 'N', N: '1' },
  text: 'C * cbrt(1e6 / N)',
  source: 'ISO 281:2007, 5.3, inverted (from memory)',
  validity: 'Ball bearings, load at most C/2.',
  domain: { N: [1e4, 1e9] },
  of: (g) => g.C * Math.cbrt(1e6 / g.N),
});

/** Load a bearing is asked to carry at most for a life, N: no more than half its rating, where the rating life ends. */
export const ratedLoad = formula({
  key: 'bearings.ratedLoad',
  symbol: 'P_zul',
  name: 'Load that a bearing may carry for the life',
  unit: 'N',
  given: { P_N: 'N', C: 'N' },
  text: 'min(P_N, C / 2)',
  source: 'ISO 281:2007, 5.3: valid up to C/2 (from memory)',
  of: (g) => Math.min(g.P_N, g.C / 2),
});

/** Revolutions of a bearing over a life; swings count by their way. i_out turns for one turn of the output. */
export const lifeTurns = formula({
  key: 'bearings.lifeTurns',
  symbol: 'N',
  name: 'Revolutions over the life',
  unit: '1',
  given: { N_moves: '1', phi_move: 'rad', i_out: '1' },
  text: 'N_moves * phi_move * i_out / (2 * pi)',
  source: 'Kinematics; a swing counts as the turns of the same way (makers’ catalogues, from memory)',
  of: (g) => (g.N_moves * g.phi_move * g.i_out) / (2 * Math.PI),
});

/** Mean speed of a shaft during a move, rad/s. */
export const moveSpeed = formula({
  key: 'bearings.moveSpeed',
  symbol: 'omega_m',
  name: 'Mean speed during a move',
  unit: 'rad/s',
  given: { phi_move: 'rad', i_out: '1', t_move: 's' },
  text: 'phi_move * i_out / t_move',
  source: 'Kinematics',
  of: (g) => (g.phi_move * g.i_out) / g.t_move,
});

/** Factor on life for a reliability R other than 90 %. */
export const reliabilityFactor = formula({
  key: 'bearings.reliabilityFactor',
  symbol: 'a_1',
  name: 'Life factor for reliability',
  unit: '1',
  given: { R: '1' },
  text: '0.95 * cbrt(log(1 / R) / log(1 / 0.9))^2 + 0.05',
  source:
    'Closed form of ISO 281:2007, Table 12 (from memory), within 2 % of it; the 1990 edition asks more: 0.21 instead of 0.25 at 99 %',
  validity: 'R from 0.9 to 0.9995.',
  domain: { R: [0.9, 0.9995] },
  of: (g) => 0.95 * Math.cbrt(Math.log(1 / g.R) / Math.log(1 / 0.9)) ** 2 + 0.05,
});

/** Life at a reliability, revolutions. */
export const reliableLife = formula({
  key: 'bearings.reliableLife',
  symbol: 'L_na',
  name: 'Life at a reliability',
  unit: '1',
  given: { a_1: '1', L_10: '1' },
  text: 'a_1 * L_10',
  source: 'ISO 281:2007, 6.2 (from memory); the factor for lubrication and dirt is left at 1',
  of: (g) => g.a_1 * g.L_10,
});

const weibull = 'Shigley’s Mechanical Engineering Design, ch. 11, three-parameter Weibull life';

/**
 * Catalogue rating that carries a load F for x_D rating lives (of 1e6 revolutions) at a reliability R, N. x_0 least
 * life, theta_x characteristic life less the least, b_w slope.
 */
export const weibullRating = formula({
  key: 'bearings.weibullRating',
  symbol: 'C_10',
  name: 'Dynamic rating needed, by Weibull',
  unit: 'N',
  given: { F: 'N', x_D: '1', R: '1', x_0: '1', theta_x: '1', b_w: '1' },
  text: 'F * cbrt(x_D / (x_0 + theta_x * log(1 / R)^(1 / b_w)))',
  source: weibull,
  validity: 'Ball bearings; x_0 = 0.02, theta_x = 4.439, b_w = 1.483 for one maker’s tests.',
  domain: { R: [0.85, 0.999], x_0: [0, 0.05], theta_x: [4, 5], b_w: [1.3, 1.7] },
  of: (g) => g.F * Math.cbrt(g.x_D / (g.x_0 + g.theta_x * Math.log(1 / g.R) ** (1 / g.b_w))),
});

/** Reliability of a bearing of rating C under a load F after x_D rating lives: the other way of `weibullRating`. */
export const weibullReliability = formula({
  key: 'bearings.weibullReliability',
  symbol: 'R',
  name: 'Reliability after a life, by Weibull',
  unit: '1',
  given: { F: 'N', x_D: '1', C: 'N', x_0: '1', theta_x: '1', b_w: '1' },
  text: 'exp(-(max(x_D * (F / C)^3 - x_0, 0) / theta_x)^b_w)',
  source: weibull,
  validity: 'Ball bearings. Before the least life the reliability is 1.',
  domain: { F: [1, 2], C: [4, 10], x_D: [1, 50], x_0: [0, 0.05], theta_x: [4, 5], b_w: [1.3, 1.7] },
  of: (g) => Math.exp(-((Math.max(g.x_D * (g.F / g.C) ** 3 - g.x_0, 0) / g.theta_x) ** g.b_w)),
});
