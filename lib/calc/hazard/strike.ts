// A strike: what turns runs into a stop while the drive still pushes. Its speed, and the peak torque in the train.
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

/**
 * Speed (rad/s) at the end of a fall: T_g (N m) is the greatest torque of the arm's weight, phi (rad) the travel between
 * the stops, J (kg m²) all that moves. The arm is level in the middle of its travel, or falls half a turn.
 */
export const fallSpeed = formula({
  key: 'hazard.fallSpeed',
  symbol: 'omega_fall',
  name: 'Speed of a load that falls from stop to stop',
  unit: 'rad/s',
  given: { T_g: 'N m', phi: 'rad', J: 'kg m^2' },
  text: 'sqrt(4 * T_g * sin(min(phi, pi) / 2) / J)',
  source: 'Energy balance of a pendulum, friction left out',
  validity:
    'The drive gives no torque: an upper bound, since friction of the train and a short winding slow the fall.',
  domain: { phi: [0.1, 6] },
  of: (g) => Math.sqrt((4 * g.T_g * Math.sin(Math.min(g.phi, Math.PI) / 2)) / g.J),
});

/** Torque (N m) that pushes on at the stop: T_d (N m) of the drive and T_g (N m) of the arm's weight, both the same way. */
export const strikePush = formula({
  key: 'hazard.strikePush',
  symbol: 'T_push',
  name: 'Torque that pushes on at the stop',
  unit: 'N m',
  given: { T_d: 'N m', T_g: 'N m' },
  text: 'T_d + T_g',
  source: 'Statics: the weight at its greatest, with the drive',
  of: (g) => g.T_d + g.T_g,
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

/** Share of the rotor in all that moves, both at the output; J_L load and arm (kg m²), N the ratio, J_m the rotor (kg m²). */
export const rotorShare = formula({
  key: 'hazard.rotorShare',
  symbol: 's_R',
  name: 'Share of the rotor in what moves',
  unit: '1',
  given: { N: '1', J_m: 'kg m^2', J_L: 'kg m^2' },
  text: 'N^2 * J_m / (J_L + N^2 * J_m)',
  source: 'Energy balance',
  of: (g) => (g.N ** 2 * g.J_m) / (g.J_L + g.N ** 2 * g.J_m),
});

/** Share of all the energy that can get into the train: a heavy arm gives most of its own to the stop and rebounds. */
export const trainEnergyShare = formula({
  key: 'hazard.trainEnergyShare',
  symbol: 'f_E',
  name: 'Share of the energy that the train may have to take',
  unit: '1',
  given: { s_R: '1' },
  text: '1 - max(0, 1 - 2 * s_R)^2',
  source: 'Momentum of two masses after one of them rebounds; all of it where the rotor is the heavier',
  domain: { s_R: [0, 1] },
  of: (g) => 1 - Math.max(0, 1 - 2 * g.s_R) ** 2,
});

/**
 * Peak torque (N m) when energy E (J) meets springs in a row, k (N m/rad), while a torque T_d (N m) keeps pushing. c_r is
 * 1 for one mass and 1.27 for arm and rotor that may rebound from one another.
 */
export const strikeTorque = formula({
  key: 'hazard.strikeTorque',
  symbol: 'T_row',
  name: 'Torque of a strike, springs in a row',
  unit: 'N m',
  given: { T_d: 'N m', c_r: '1', k: 'N m/rad', E: 'J' },
  text: 'T_d + c_r * sqrt(T_d^2 + 2 * k * E)',
  source: balance,
  validity:
    'Linear springs, no damping. With c_r of 1.27 an upper bound: two masses worked in time never reach it.',
  domain: { c_r: [1, 1.3] },
  of: (g) => g.T_d + g.c_r * Math.sqrt(g.T_d ** 2 + 2 * g.k * g.E),
});

/** Torque (N m) in the train when the stop k_s (N m/rad) slows the arm and the train only has to slow the rotor, s_R of all. */
export const strikeThroughArm = formula({
  key: 'hazard.strikeThroughArm',
  symbol: 'T_arm',
  name: 'Torque of a strike, the stop taking the arm',
  unit: 'N m',
  given: { T_d: 'N m', s_R: '1', k_s: 'N m/rad', E: 'J' },
  text: '2 * T_d + 1.77 * s_R * sqrt(T_d^2 + 2 * k_s * E)',
  source:
    'Newton’s law; 1.77 is the most that a half-sine pulse is magnified, Harris’ Shock and Vibration Handbook (from memory)',
  validity: 'An upper bound: the push counts twice, as if it came on at the blow.',
  domain: { s_R: [0, 1] },
  of: (g) => 2 * g.T_d + 1.77 * g.s_R * Math.sqrt(g.T_d ** 2 + 2 * g.k_s * g.E),
});

/** Torque (N m) in the train k_t (N m/rad) when the stop does not give, f_E of the energy E (J) going into it. */
export const strikeOnTrain = formula({
  key: 'hazard.strikeOnTrain',
  symbol: 'T_hard',
  name: 'Torque of a strike on a stop that does not give',
  unit: 'N m',
  given: { T_d: 'N m', k_t: 'N m/rad', f_E: '1', E: 'J' },
  text: '2 * T_d + sqrt(T_d^2 + 2 * k_t * f_E * E)',
  source: balance,
  validity:
    'An upper bound for any stop, of the first blow: damping is taken to have stilled the train before the drive brings the arm back.',
  domain: { f_E: [0, 1] },
  of: (g) => 2 * g.T_d + Math.sqrt(g.T_d ** 2 + 2 * g.k_t * g.f_E * g.E),
});

/** Peak torque (N m) of a strike: the least of three bounds, each of which it stays below. */
export const strikePeak = formula({
  key: 'hazard.strikePeak',
  symbol: 'T_s',
  name: 'Peak torque of a strike',
  unit: 'N m',
  given: { T_row: 'N m', T_arm: 'N m', T_hard: 'N m' },
  text: 'min(T_row, T_arm, T_hard)',
  source: 'All three bounds hold at once',
  of: (g) => Math.min(g.T_row, g.T_arm, g.T_hard),
});

export const strikeFormulas = [
  speedOverTravel,
  reachableSpeed,
  fallSpeed,
  strikePush,
  strikeSpeed,
  stiffnessAtRadius,
  rotorShare,
  trainEnergyShare,
  strikeTorque,
  strikeThroughArm,
  strikeOnTrain,
  strikePeak,
] as const;
