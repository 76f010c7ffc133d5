// Tightening: the force a screw is drawn up with, and the torque that does it, both ways.
import { formula } from '../formula';

const shigley = 'Shigley’s Mechanical Engineering Design, ch. 8';
const longForm = 'VDI 2230 form of the tightening torque (Motosh), from memory';

/** Force that a screw bears without lasting stretch, N. */
export const proofForce = formula({
  key: 'fasteners.proofForce',
  symbol: 'F_p',
  name: 'Proof force of a screw',
  unit: 'N',
  given: { S_p: 'Pa', A_s: 'm^2' },
  text: 'S_p * A_s',
  source: 'ISO 898-1, proof loads',
  of: (g) => g.S_p * g.A_s,
});

/** Preload at a share u of the proof force, N: 0.75 where the joint is opened again. */
export const preload = formula({
  key: 'fasteners.preload',
  symbol: 'F_i',
  name: 'Preload of a screw',
  unit: 'N',
  given: { u: '1', S_p: 'Pa', A_s: 'm^2' },
  text: 'u * S_p * A_s',
  source: `${shigley}: 0.75 for joints opened again, 0.9 for lasting ones`,
  of: (g) => g.u * g.S_p * g.A_s,
});

/** Preload left after settling and creep, N; s_l the share left. */
export const preloadLeft = formula({
  key: 'fasteners.preloadLeft',
  symbol: 'F_i',
  name: 'Preload left after creep',
  unit: 'N',
  given: { s_l: '1', F_0: 'N' },
  text: 's_l * F_0',
  source: 'Definition; shares for plastic under the head stand in the rules of printing, from judgement',
  of: (g) => g.s_l * g.F_0,
});

/** Torque that draws a screw up to a preload, N m, by one factor for all friction. */
export const tighteningTorque = formula({
  key: 'fasteners.tighteningTorque',
  symbol: 'T_M',
  name: 'Tightening torque',
  unit: 'N m',
  given: { K: '1', F_i: 'N', d: 'm' },
  text: 'K * F_i * d',
  source: `${shigley}; preload by torque scatters by about 30 % either way (from memory)`,
  of: (g) => g.K * g.F_i * g.d,
});

/** Preload that a torque draws up, N: the other way of `tighteningTorque`. */
export const preloadOfTorque = formula({
  key: 'fasteners.preloadOfTorque',
  symbol: 'F_i',
  name: 'Preload of a tightening torque',
  unit: 'N',
  given: { T_M: 'N m', K: '1', d: 'm' },
  text: 'T_M / (K * d)',
  source: `${shigley}; preload by torque scatters by about 30 % either way (from memory)`,
  of: (g) => g.T_M / (g.K * g.d),
});

/**
 * Torque that draws a screw up to a preload, N m, from the friction in the thread and under the head. D_w outer
 * diameter of the seat, D_h that of the hole.
 */
export const torqueByFriction = formula({
  key: 'fasteners.torqueByFriction',
  symbol: 'T_M',
  name: 'Tightening torque from friction',
  unit: 'N m',
  given: { F_i: 'N', P: 'm', mu_t: '1', d_2: 'm', mu_b: '1', D_w: 'm', D_h: 'm' },
  text: 'F_i * (P / (2 * pi) + mu_t * d_2 / (2 * cos(pi / 6)) + mu_b * (D_w + D_h) / 4)',
  source: longForm,
  domain: { mu_t: [0.05, 0.3], mu_b: [0.05, 0.3] },
  of: (g) => g.F_i * arm(g),
});

/** Preload that a torque draws up, N, from friction: the other way of `torqueByFriction`. */
export const preloadByFriction = formula({
  key: 'fasteners.preloadByFriction',
  symbol: 'F_i',
  name: 'Preload of a torque from friction',
  unit: 'N',
  given: { T_M: 'N m', P: 'm', mu_t: '1', d_2: 'm', mu_b: '1', D_w: 'm', D_h: 'm' },
  text: 'T_M / (P / (2 * pi) + mu_t * d_2 / (2 * cos(pi / 6)) + mu_b * (D_w + D_h) / 4)',
  source: longForm,
  domain: { mu_t: [0.05, 0.3], mu_b: [0.05, 0.3] },
  of: (g) => g.T_M / arm(g),
});

/** Factor for all friction that a torque and a preload amount to. */
export const torqueFactor = formula({
  key: 'fasteners.torqueFactor',
  symbol: 'K',
  name: 'Torque factor of a screw',
  unit: '1',
  given: { T_M: 'N m', F_i: 'N', d: 'm' },
  text: 'T_M / (F_i * d)',
  source: 'Definition',
  of: (g) => g.T_M / (g.F_i * g.d),
});

interface Friction {
  readonly P: number;
  readonly mu_t: number;
  readonly d_2: number;
  readonly mu_b: number;
  readonly D_w: number;
  readonly D_h: number;
}

function arm(g: Friction): number {
  const thread = (g.mu_t * g.d_2) / (2 * Math.cos(Math.PI / 6));
  return g.P / (2 * Math.PI) + thread + (g.mu_b * (g.D_w + g.D_h)) / 4;
}
