// What the teeth of a planetary set carry: torque of the member that is held, passes of a tooth, and planets bent both ways.
import { formula } from '../../formula';

const BALANCE = 'Torque balance of a planetary set; VDI 2157:2012 (from memory)';
const MEAN = 'ISO 6336-3:2006, annex B, mean stress influence (from memory)';

/** Ratio with the members of input and output exchanged. */
export const reversedRatio = formula({
  key: 'gears.reversedRatio',
  symbol: 'i_rev',
  name: 'Ratio with input and output exchanged',
  unit: '1',
  given: { i: '1' },
  text: '1 / i',
  source: 'Definition',
  domain: { i: [-8, -1.5] },
  of: (g) => 1 / g.i,
});

/** Size of a ratio, whichever way the output turns. */
export const ratioSize = formula({
  key: 'gears.ratioSize',
  symbol: 'i_abs',
  name: 'Ratio regardless of direction',
  unit: '1',
  given: { i: '1' },
  text: 'abs(i)',
  source: 'Definition',
  domain: { i: [-8, 8] },
  of: (g) => Math.abs(g.i),
});

/**
 * Torque (N m) that the held member puts on the housing: T_1 (N m) drives, T_2 (N m) is given out, both as sizes; i is the
 * ratio with its sign. An output that turns against the input adds to it.
 */
export const heldTorque = formula({
  key: 'gears.heldTorque',
  symbol: 'T_h',
  name: 'Torque of the held member',
  unit: 'N m',
  given: { T_2: 'N m', i: '1', T_1: 'N m' },
  text: 'abs(T_2 * sign(i) - T_1)',
  source: BALANCE,
  domain: { T_2: [2, 9], i: [-8, 8], T_1: [0.1, 1.9] },
  of: (g) => Math.abs(g.T_2 * Math.sign(g.i) - g.T_1),
});

/** Times a tooth meets a mate for one turn of the output: turns i_m of its gear, i_c of the carrier, N mates (1 for a planet). */
export const meetingsPerOutputTurn = formula({
  key: 'gears.meetingsPerOutputTurn',
  symbol: 'i_meet',
  name: 'Meetings of a tooth for one turn of the output',
  unit: '1',
  given: { i_m: '1', i_c: '1', N: '1' },
  text: 'abs(i_m - i_c) * N',
  source: 'Kinematics; what counts is the turning relative to the carrier',
  domain: { i_m: [4, 20], i_c: [0.5, 3], N: [1, 6] },
  of: (g) => Math.abs(g.i_m - g.i_c) * g.N,
});

/** Turns of a planet on its pin for one turn of the output, from those of a central member with z_m teeth and of the carrier. */
export const planetTurns = formula({
  key: 'gears.planetTurns',
  symbol: 'i_p',
  name: 'Turns of a planet on its pin for one turn of the output',
  unit: '1',
  given: { i_m: '1', i_c: '1', z_m: '1', z_p: '1' },
  text: 'abs(i_m - i_c) * z_m / z_p',
  source: 'Willis equation of a planetary set, as a size',
  domain: { i_m: [4, 20], i_c: [0.5, 3], z_m: [12, 40], z_p: [12, 40] },
  of: (g) => (Math.abs(g.i_m - g.i_c) * g.z_m) / g.z_p,
});

/** Speed (rad/s) of a planet on its pin, regardless of direction; omega_mc is that of a central member relative to the carrier. */
export const planetSpin = formula({
  key: 'gears.planetSpin',
  symbol: 'omega_p',
  name: 'Speed of a planet on its pin',
  unit: 'rad/s',
  given: { omega_mc: 'rad/s', z_m: '1', z_p: '1' },
  text: 'abs(omega_mc) * z_m / z_p',
  source: 'Willis equation of a planetary set, as a size',
  domain: { omega_mc: [-10, 10], z_m: [12, 40], z_p: [12, 40] },
  of: (g) => (Math.abs(g.omega_mc) * g.z_m) / g.z_p,
});

/** Torque (N m) that a tooth force F_t (N) on a circle of diameter d (m) gives. */
export const forceTorque = formula({
  key: 'gears.forceTorque',
  symbol: 'T_mesh',
  name: 'Torque of the tooth force of one mesh',
  unit: 'N m',
  given: { F_t: 'N', d: 'm' },
  text: 'F_t * d / 2',
  source: 'Mechanics',
  of: (g) => (g.F_t * g.d) / 2,
});

/** Diameter (m) of the circle on which the pins stand. */
export const pinCircle = formula({
  key: 'gears.pinCircle',
  symbol: 'd_c',
  name: 'Diameter of the circle of the planet pins',
  unit: 'm',
  given: { a: 'm' },
  text: '2 * a',
  source: 'Definition',
  of: (g) => 2 * g.a,
});

/** Power (W) that the most loaded planet passes on. */
export const planetPower = formula({
  key: 'gears.planetPower',
  symbol: 'P_p',
  name: 'Rolling power of the most loaded planet',
  unit: 'W',
  given: { P: 'W', K_gamma: '1', N: '1' },
  text: 'P * K_gamma / N',
  source: 'ISO 6336-1, mesh load factor K_gamma (from memory)',
  domain: { K_gamma: [1, 2], N: [2, 7] },
  of: (g) => (g.P * g.K_gamma) / g.N,
});

/**
 * Force (N) that is left on a central member or the carrier because one planet carries K_gamma times its share and the
 * others divide the rest: F_sum (N) is the sum of all planets' forces there.
 */
export const unevenForce = formula({
  key: 'gears.unevenForce',
  symbol: 'F_res',
  name: 'Force left by planets that do not share evenly',
  unit: 'N',
  given: { F_sum: 'N', K_gamma: '1', N: '1' },
  text: 'F_sum * (K_gamma - 1) / (N - 1)',
  source: 'Statics: forces of equal planets at equal angles cancel, what one has more does not',
  validity: 'Two planets or more.',
  domain: { K_gamma: [1, 2], N: [2, 7] },
  of: (g) => (g.F_sum * (g.K_gamma - 1)) / (g.N - 1),
});

/** Factor on fatigue strength in pulsating stress for the stress ratio R; M is the mean stress sensitivity of the material. */
export const meanStressFactor = formula({
  key: 'gears.meanStressFactor',
  symbol: 'Y_M',
  name: 'Mean stress influence factor',
  unit: '1',
  given: { R: '1', M: '1' },
  text: '1 / (1 - R * (1 - M) / (1 + M))',
  source: MEAN,
  validity: 'R from −1.2 for planets and idlers, which are bent both ways, to 0; M about 0.3 to 0.5.',
  domain: { R: [-1.2, -0.1], M: [0.2, 0.6] },
  of: (g) => 1 / (1 - (g.R * (1 - g.M)) / (1 + g.M)),
});

export const planetaryLoadFormulas = [
  reversedRatio,
  ratioSize,
  heldTorque,
  meetingsPerOutputTurn,
  planetTurns,
  planetSpin,
  forceTorque,
  pinCircle,
  planetPower,
  unevenForce,
  meanStressFactor,
] as const;
