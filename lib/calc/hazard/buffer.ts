// Buffers at a stop: what they bear, what is left when they are solid, and the travel that keeps a strike low.
import { formula } from '../formula';

const balance =
  'Energy balance of a mass on a spring; Timoshenko, Strength of Materials, impact (from memory)';

/** Torque (N m) at which a spring buffer k_s (N m/rad) has used up its travel phi_b (rad). */
export const fullBufferTorque = formula({
  key: 'hazard.fullBufferTorque',
  symbol: 'T_full',
  name: 'Torque at which the buffer is solid',
  unit: 'N m',
  given: { k_s: 'N m/rad', phi_b: 'rad' },
  text: 'k_s * phi_b',
  source: 'Linear spring',
  of: (g) => g.k_s * g.phi_b,
});

/** Torque (N m) at the stop when it has slowed all that moves: what its buffer must bear without getting solid. */
export const stopPeak = formula({
  key: 'hazard.stopPeak',
  symbol: 'T_stop',
  name: 'Torque at the stop',
  unit: 'N m',
  given: { T_d: 'N m', k_s: 'N m/rad', E: 'J' },
  text: 'T_d + sqrt(T_d^2 + 2 * k_s * E)',
  source: balance,
  of: (g) => g.T_d + Math.sqrt(g.T_d ** 2 + 2 * g.k_s * g.E),
});

/** Energy (J) left when the buffer k_s (N m/rad) is solid: what moves, and what the drive has added, less what it holds. */
export const energyPastBuffer = formula({
  key: 'hazard.energyPastBuffer',
  symbol: 'E_left',
  name: 'Energy left when the buffer is solid',
  unit: 'J',
  given: { E: 'J', T_d: 'N m', T_full: 'N m', k_s: 'N m/rad' },
  text: 'E + T_d * T_full / k_s - T_full^2 / (2 * k_s)',
  source: balance,
  validity: 'Below zero the buffer never gets solid.',
  domain: { E: [50, 90], T_d: [0, 2], T_full: [1, 5], k_s: [1, 5] },
  of: (g) => g.E + (g.T_d * g.T_full) / g.k_s - g.T_full ** 2 / (2 * g.k_s),
});

/** Peak torque (N m) when the buffer gets solid and the train k_t (N m/rad) takes its share f_E of what is left. */
export const solidStrikeTorque = formula({
  key: 'hazard.solidStrikeTorque',
  symbol: 'T_s',
  name: 'Peak torque of a strike past the buffer',
  unit: 'N m',
  given: { T_d: 'N m', s_R: '1', T_full: 'N m', k_t: 'N m/rad', f_E: '1', E_left: 'J' },
  text: '2 * T_d + 1.77 * s_R * T_full + 1.05 * sqrt(T_d^2 + 2 * k_t * f_E * E_left)',
  source: balance,
  validity:
    'An upper bound, a twentieth for the second blow of what the drive pushes back; stop stiff once the buffer is solid; E_left not below zero.',
  domain: { s_R: [0, 1], f_E: [0, 1] },
  of: (g) =>
    2 * g.T_d + 1.77 * g.s_R * g.T_full + 1.05 * Math.sqrt(g.T_d ** 2 + 2 * g.k_t * g.f_E * g.E_left),
});

/** Output torque (N m) that a strike may reach so that an element that holds T (N m) keeps its factor S. */
export const strikeLimit = formula({
  key: 'hazard.strikeLimit',
  symbol: 'T_lim',
  name: 'Torque that a strike may reach',
  unit: 'N m',
  given: { T: 'N m', S: '1' },
  text: 'T / S',
  source: 'Definition of the factor',
  of: (g) => g.T / g.S,
});

/** Angle (rad) that a stroke s_b (m) is at a radius r (m). */
export const bufferAngle = formula({
  key: 'hazard.bufferAngle',
  symbol: 'phi_b',
  name: 'Travel of a buffer as an angle',
  unit: 'rad',
  given: { s_b: 'm', r: 'm' },
  text: 's_b / r',
  source: 'Geometry, small angle',
  of: (g) => g.s_b / g.r,
});

/**
 * Travel (rad) of a constant-force buffer that keeps a strike at T_lim (N m) in the train, the least of any buffer; the
 * rotor, s_R of what moves, swings behind the sudden force by as much again.
 */
export const bufferTravel = formula({
  key: 'hazard.bufferTravel',
  symbol: 'phi_b',
  name: 'Travel of a constant-force buffer',
  unit: 'rad',
  given: { s_R: '1', E: 'J', T_lim: 'N m', T_d: 'N m' },
  text: '2 * s_R * E / (T_lim - 2 * T_d)',
  source: 'Energy balance: constant force over the whole travel, doubled in the train by its sudden onset',
  validity: 'T_lim above twice T_d: a drive that pushes harder is not stopped within the limit.',
  domain: { s_R: [0, 1], T_lim: [21, 40], T_d: [0, 10] },
  of: (g) => (g.T_lim > 2 * g.T_d ? (2 * g.s_R * g.E) / (g.T_lim - 2 * g.T_d) : Number.NaN),
});

/** Travel (rad) of a spring at the stop that keeps a strike at T_lim (N m) in the train. */
export const springBufferTravel = formula({
  key: 'hazard.springBufferTravel',
  symbol: 'phi_b',
  name: 'Travel of a spring buffer',
  unit: 'rad',
  given: { E: 'J', T_lim: 'N m', T_d: 'N m', s_R: '1' },
  text: '2 * E / ((T_lim - 2 * T_d) / (1.77 * s_R) - T_d)',
  source: 'Solved from the torque of a strike with the stop taking the arm, at the stop’s own peak',
  validity:
    'T_lim above T_d (2 + 1.77 s_R): a drive that pushes harder goes past the limit on any spring. Train taken as stiff.',
  domain: { T_lim: [61, 90], T_d: [0, 10], s_R: [0.1, 1] },
  of: (g) => {
    const room = (g.T_lim - 2 * g.T_d) / (1.77 * g.s_R) - g.T_d;
    return room > 0 ? (2 * g.E) / room : Number.NaN;
  },
});

/** Way (m) that a travel phi_b (rad) is at a radius r (m). */
export const bufferStroke = formula({
  key: 'hazard.bufferStroke',
  symbol: 's_b',
  name: 'Stroke of a buffer at its radius',
  unit: 'm',
  given: { phi_b: 'rad', r: 'm' },
  text: 'phi_b * r',
  source: 'Geometry',
  of: (g) => g.phi_b * g.r,
});

export const bufferFormulas = [
  fullBufferTorque,
  stopPeak,
  energyPastBuffer,
  solidStrikeTorque,
  strikeLimit,
  bufferAngle,
  bufferTravel,
  springBufferTravel,
  bufferStroke,
] as const;
