// A strike: what turns runs into a stop while the drive still pushes. Peak torque, and the travel that keeps it low.
import { formula } from '../formula';

const balance =
  'Energy balance of a mass on a spring; Timoshenko, Strength of Materials, impact (from memory)';

/** Speed (rad/s) that a torque T_d (N m) gives to an inertia J (kg m²) from rest over an angle phi (rad). */
export const speedOverTravel = formula({
  key: 'hazard.speedOverTravel',
  symbol: 'omega_phi',
  name: 'Speed gained over a travel',
  unit: 'rad/s',
  given: { T_d: 'N m', phi: 'rad', J: 'kg m^2' },
  text: 'sqrt(2 * T_d * phi / J)',
  source: 'Energy balance, friction left out',
  validity: 'T_d as at standstill over the whole travel: an upper bound, since torque falls with speed.',
  of: (g) => Math.sqrt((2 * g.T_d * g.phi) / g.J),
});

/** The lower of two speeds (rad/s): what the travel lets the drive reach, and where it has no torque left. */
export const reachableSpeed = formula({
  key: 'hazard.reachableSpeed',
  symbol: 'omega_max',
  name: 'Speed that the drive can reach before the stop',
  unit: 'rad/s',
  given: { omega_phi: 'rad/s', omega_free: 'rad/s' },
  text: 'min(omega_phi, omega_free)',
  source: 'Both bounds hold at once',
  of: (g) => Math.min(g.omega_phi, g.omega_free),
});

/** Speed (rad/s) taken for the strike: the greater of the duty’s and the drive’s. */
export const strikeSpeed = formula({
  key: 'hazard.strikeSpeed',
  symbol: 'omega_s',
  name: 'Speed at the stop',
  unit: 'rad/s',
  given: { omega_duty: 'rad/s', omega_max: 'rad/s' },
  text: 'max(omega_duty, omega_max)',
  source: 'The worse of the two',
  of: (g) => Math.max(g.omega_duty, g.omega_max),
});

/** Stiffness (N m/rad) about an axis of a spring of rate c (N/m) that pushes square to a radius r (m). */
export const stiffnessAtRadius = formula({
  key: 'hazard.stiffnessAtRadius',
  symbol: 'k_s',
  name: 'Stiffness of a stop about the axis',
  unit: 'N m/rad',
  given: { c: 'N/m', r: 'm' },
  text: 'c * r^2',
  source: 'Statics, small angle',
  of: (g) => g.c * g.r ** 2,
});

/** Peak torque (N m) when energy E (J) meets a spring k (N m/rad) while a torque T_d (N m) keeps pushing. */
export const strikeTorque = formula({
  key: 'hazard.strikeTorque',
  symbol: 'T_s',
  name: 'Peak torque of a strike, drive still pushing',
  unit: 'N m',
  given: { T_d: 'N m', k: 'N m/rad', E: 'J' },
  text: 'T_d + sqrt(T_d^2 + 2 * k * E)',
  source: balance,
  validity:
    'Linear springs in series, no damping. k of train and stop together and E of all that moves: two masses that rebound from one another can bring up to 16 % more; where the arm is the heavier, its energy goes into the stop and the train sees less.',
  of: (g) => g.T_d + Math.sqrt(g.T_d ** 2 + 2 * g.k * g.E),
});

/** Angle (rad) that the springs give at the peak of a strike. */
export const strikeAngle = formula({
  key: 'hazard.strikeAngle',
  symbol: 'phi_s',
  name: 'Give at the peak of a strike',
  unit: 'rad',
  given: { T_s: 'N m', k: 'N m/rad' },
  text: 'T_s / k',
  source: balance,
  of: (g) => g.T_s / g.k,
});

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

/** Energy (J) left when the buffer is solid: what moves, and what the drive has added, less what the springs k hold. */
export const energyPastBuffer = formula({
  key: 'hazard.energyPastBuffer',
  symbol: 'E_left',
  name: 'Energy left when the buffer is solid',
  unit: 'J',
  given: { E: 'J', T_d: 'N m', T_full: 'N m', k: 'N m/rad' },
  text: 'E + T_d * T_full / k - T_full^2 / (2 * k)',
  source: balance,
  validity: 'k of train and buffer in series. Below zero the buffer never gets solid.',
  domain: { E: [50, 90], T_d: [0, 2], T_full: [1, 5], k: [1, 5] },
  of: (g) => g.E + (g.T_d * g.T_full) / g.k - g.T_full ** 2 / (2 * g.k),
});

/** Peak torque (N m) when the buffer gets solid and the train k_t (N m/rad) alone takes what is left. */
export const solidStrikeTorque = formula({
  key: 'hazard.solidStrikeTorque',
  symbol: 'T_s',
  name: 'Peak torque of a strike past the buffer',
  unit: 'N m',
  given: { T_d: 'N m', T_full: 'N m', k_t: 'N m/rad', E_left: 'J' },
  text: 'T_d + sqrt((T_full - T_d)^2 + 2 * k_t * E_left)',
  source: balance,
  validity: 'Stop stiff once the buffer is solid; E_left not below zero.',
  of: (g) => g.T_d + Math.sqrt((g.T_full - g.T_d) ** 2 + 2 * g.k_t * g.E_left),
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

/** Peak torque (N m) on a buffer of constant torque over a travel phi_b (rad), stiff train: no buffer of that travel does better. */
export const bufferTorque = formula({
  key: 'hazard.bufferTorque',
  symbol: 'T_b',
  name: 'Peak torque on a constant-force buffer',
  unit: 'N m',
  given: { T_d: 'N m', E: 'J', phi_b: 'rad' },
  text: 'T_d + E / phi_b',
  source: 'Energy balance: constant force over the whole travel',
  of: (g) => g.T_d + g.E / g.phi_b,
});

/** Peak torque (N m) on a linear spring that uses a travel phi_b (rad) to its end, stiff train. */
export const springBufferTorque = formula({
  key: 'hazard.springBufferTorque',
  symbol: 'T_b',
  name: 'Peak torque on a spring buffer that uses its travel',
  unit: 'N m',
  given: { T_d: 'N m', E: 'J', phi_b: 'rad' },
  text: '2 * (T_d + E / phi_b)',
  source: balance,
  of: (g) => 2 * (g.T_d + g.E / g.phi_b),
});

/** Travel (rad) of a constant-force buffer that keeps a strike at T_lim (N m), stiff train: the least of any buffer. */
export const bufferTravel = formula({
  key: 'hazard.bufferTravel',
  symbol: 'phi_b',
  name: 'Travel of a constant-force buffer',
  unit: 'rad',
  given: { E: 'J', T_lim: 'N m', T_d: 'N m' },
  text: 'E / (T_lim - T_d)',
  source: 'Energy balance: constant force over the whole travel',
  validity: 'T_lim above T_d: a drive that pushes harder than the limit is not stopped within it.',
  domain: { T_lim: [11, 20], T_d: [0, 10] },
  of: (g) => (g.T_lim > g.T_d ? g.E / (g.T_lim - g.T_d) : Number.NaN),
});

/**
 * Travel (rad) of a linear spring that keeps a strike at T_lim (N m), the train’s own give at that torque taken off;
 * k_t (N m/rad) its stiffness. Below zero the train alone gives enough.
 */
export const springBufferTravel = formula({
  key: 'hazard.springBufferTravel',
  symbol: 'phi_b',
  name: 'Travel of a spring buffer',
  unit: 'rad',
  given: { E: 'J', T_lim: 'N m', T_d: 'N m', k_t: 'N m/rad' },
  text: '2 * E / (T_lim - 2 * T_d) - T_lim / k_t',
  source: balance,
  validity:
    'T_lim above twice T_d: a drive that meets a spring at speed winds it up to twice its own torque at least.',
  domain: { T_lim: [21, 40], T_d: [0, 10] },
  of: (g) => (g.T_lim > 2 * g.T_d ? (2 * g.E) / (g.T_lim - 2 * g.T_d) - g.T_lim / g.k_t : Number.NaN),
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

/** Share of the give, and of the energy, that one spring of a row takes; k_sum the row, k_part the one, at one shaft (N m/rad). */
export const giveShare = formula({
  key: 'hazard.giveShare',
  symbol: 's_k',
  name: 'Share of one spring in the give of a row',
  unit: '1',
  given: { k_sum: 'N m/rad', k_part: 'N m/rad' },
  text: 'k_sum / k_part',
  source: 'Springs in series carry one torque',
  of: (g) => g.k_sum / g.k_part,
});

export const strikeFormulas = [
  speedOverTravel,
  reachableSpeed,
  strikeSpeed,
  stiffnessAtRadius,
  strikeTorque,
  strikeAngle,
  fullBufferTorque,
  energyPastBuffer,
  solidStrikeTorque,
  strikeLimit,
  bufferAngle,
  bufferTorque,
  springBufferTorque,
  bufferTravel,
  springBufferTravel,
  bufferStroke,
  giveShare,
] as const;
