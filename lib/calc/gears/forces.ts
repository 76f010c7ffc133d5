// Speeds, torques and tooth forces of a stage.
import { formula } from '../formula';

const TRADE = 'Mechanics of a gear pair; DIN 3990-1:1987, nominal tangential load (from memory)';
const helix = [0, 0.75] as const;
const angle = [0.24, 0.5] as const;

/** Ratio of a train (1) after one more stage of ratio u (1). */
export const trainRatio = formula({
  key: 'gears.trainRatio',
  symbol: 'i',
  name: 'Ratio of the train up to this stage',
  unit: '1',
  given: { i_before: '1', u: '1' },
  text: 'i_before * u',
  source: 'Kinematics of gears in series',
  of: (g) => g.i_before * g.u,
});

/** Speed (rad/s) of the wheel of a stage whose pinion turns at omega_1 (rad/s). */
export const wheelSpeed = formula({
  key: 'gears.wheelSpeed',
  symbol: 'omega_2',
  name: 'Speed of the wheel',
  unit: 'rad/s',
  given: { omega_1: 'rad/s', u: '1' },
  text: 'omega_1 / u',
  source: TRADE,
  of: (g) => g.omega_1 / g.u,
});

/** Torque (N m) of the wheel from that of the pinion, driving. */
export const wheelTorque = formula({
  key: 'gears.wheelTorque',
  symbol: 'T_2',
  name: 'Torque of the wheel',
  unit: 'N m',
  given: { T_1: 'N m', u: '1', eta: '1' },
  text: 'T_1 * u * eta',
  source: TRADE,
  of: (g) => g.T_1 * g.u * g.eta,
});

/** Torque (N m) the pinion needs to drive the wheel with T_2 (N m). */
export const pinionTorque = formula({
  key: 'gears.pinionTorque',
  symbol: 'T_1',
  name: 'Torque of the pinion',
  unit: 'N m',
  given: { T_2: 'N m', u: '1', eta: '1' },
  text: 'T_2 / (u * eta)',
  source: TRADE,
  domain: { eta: [0.3, 1] },
  of: (g) => g.T_2 / (g.u * g.eta),
});

/** Power (W) of a shaft. */
export const shaftPower = formula({
  key: 'gears.shaftPower',
  symbol: 'P',
  name: 'Power of the shaft',
  unit: 'W',
  given: { T: 'N m', omega: 'rad/s' },
  text: 'T * omega',
  source: 'Mechanics',
  of: (g) => g.T * g.omega,
});

/** Speed (m/s) of the teeth on a circle of diameter d (m). */
export const pitchLineVelocity = formula({
  key: 'gears.pitchLineVelocity',
  symbol: 'v',
  name: 'Pitch-line velocity',
  unit: 'm/s',
  given: { omega: 'rad/s', d: 'm' },
  text: 'omega * d / 2',
  source: TRADE,
  of: (g) => (g.omega * g.d) / 2,
});

/** Load cycles of a tooth that is loaded n_mesh times a turn, turning at omega (rad/s) for t (s). */
export const loadCycles = formula({
  key: 'gears.loadCycles',
  symbol: 'N_L',
  name: 'Load cycles of a tooth',
  unit: '1',
  given: { omega: 'rad/s', t: 's', n_mesh: '1' },
  text: 'omega / (2 * pi) * t * n_mesh',
  source: TRADE,
  of: (g) => (g.omega / (2 * Math.PI)) * g.t * g.n_mesh,
});

/** Tangential force (N) on the reference circle. */
export const tangentialForce = formula({
  key: 'gears.tangentialForce',
  symbol: 'F_t',
  name: 'Tangential force on the reference circle',
  unit: 'N',
  given: { T: 'N m', d: 'm' },
  text: '2 * T / d',
  source: TRADE,
  of: (g) => (2 * g.T) / g.d,
});

/** Radial force (N), which pushes the shafts apart. */
export const radialForce = formula({
  key: 'gears.radialForce',
  symbol: 'F_r',
  name: 'Radial force',
  unit: 'N',
  given: { F_t: 'N', alpha_n: 'rad', beta: 'rad' },
  text: 'F_t * tan(alpha_n) / cos(beta)',
  source: TRADE,
  domain: { alpha_n: angle, beta: helix },
  of: (g) => (g.F_t * Math.tan(g.alpha_n)) / Math.cos(g.beta),
});

/** A force (N) along the line of centres that draws two axes together, as one that pushes them apart: with the sign turned. */
export const towardsEachOther = formula({
  key: 'gears.towardsEachOther',
  symbol: 'F_r_in',
  name: 'Radial force that draws the axes together',
  unit: 'N',
  given: { F: 'N' },
  text: '-F',
  source: 'Inside a ring the pressure on the pinion points to the side of the ring’s axis',
  of: (g) => -g.F,
});

/** Axial force (N) of a single-helical gear. */
export const axialForce = formula({
  key: 'gears.axialForce',
  symbol: 'F_a',
  name: 'Axial force',
  unit: 'N',
  given: { F_t: 'N', beta: 'rad' },
  text: 'F_t * tan(beta)',
  source: TRADE,
  domain: { beta: helix },
  of: (g) => g.F_t * Math.tan(g.beta),
});

/** Axial force (N) inside a double-helical gear: each half carries half of F_t (N). */
export const axialForcePerHalf = formula({
  key: 'gears.axialForcePerHalf',
  symbol: 'F_a_half',
  name: 'Axial force of one half of a double-helical gear',
  unit: 'N',
  given: { F_t: 'N', beta: 'rad' },
  text: 'F_t / 2 * tan(beta)',
  source: 'Niemann, Winter, Maschinenelemente II, double-helical gears (from memory)',
  validity: 'Both halves carry equal shares.',
  domain: { beta: helix },
  of: (g) => (g.F_t / 2) * Math.tan(g.beta),
});

/**
 * Axial force (N) that a gear of two halves puts on its shaft: q is the share of F_t (N) on the first half; helix angles
 * (rad) carry the sign of their hand. Opposite hands and q = 1/2 give none.
 */
export const netAxialForce = formula({
  key: 'gears.netAxialForce',
  symbol: 'F_a_net',
  name: 'Net axial force of two halves',
  unit: 'N',
  given: { F_t: 'N', q: '1', beta_1: 'rad', beta_2: 'rad' },
  text: 'F_t * (q * tan(beta_1) + (1 - q) * tan(beta_2))',
  source: 'Niemann, Winter, Maschinenelemente II, double-helical gears (from memory)',
  domain: { q: [0.55, 0.9], beta_1: [0.3, 0.7], beta_2: [-0.2, 0.2] },
  of: (g) => g.F_t * (g.q * Math.tan(g.beta_1) + (1 - g.q) * Math.tan(g.beta_2)),
});

/** Force (N) along the line of action, square to the flank. */
export const normalForce = formula({
  key: 'gears.normalForce',
  symbol: 'F_n',
  name: 'Force square to the flank',
  unit: 'N',
  given: { F_t: 'N', alpha_n: 'rad', beta: 'rad' },
  text: 'F_t / (cos(alpha_n) * cos(beta))',
  source: TRADE,
  domain: { alpha_n: angle, beta: helix },
  of: (g) => g.F_t / (Math.cos(g.alpha_n) * Math.cos(g.beta)),
});

export const forceFormulas = [
  trainRatio,
  wheelSpeed,
  wheelTorque,
  pinionTorque,
  shaftPower,
  pitchLineVelocity,
  loadCycles,
  tangentialForce,
  radialForce,
  towardsEachOther,
  axialForce,
  axialForcePerHalf,
  netAxialForce,
  normalForce,
] as const;
