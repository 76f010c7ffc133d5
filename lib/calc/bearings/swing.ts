// A bearing that swings: how far it must swing so that each ball reaches its neighbour’s path.
import { formula } from '../formula';

/** How many balls a deep-groove bearing has at least, from its bore and outside; not rounded. */
export const ballCount = formula({
  key: 'bearings.ballCount',
  symbol: 'Z_b',
  name: 'Number of balls, low estimate',
  unit: '1',
  given: { D: 'm', d: 'm' },
  text: '2.9 * (D + d) / (D - d)',
  source:
    'Rule of the trade (from memory); low: a 608 has 7 where it gives 6.2, a 6200 has 8 where it gives 5.8',
  validity: 'Single-row deep-groove ball bearings.',
  domain: { D: [19, 30], d: [6, 15] },
  of: (g) => (2.9 * (g.D + g.d)) / (g.D - g.d),
});

/** Ball diameter over pitch diameter of a deep-groove bearing, from its bore and outside. */
export const ballRatio = formula({
  key: 'bearings.ballRatio',
  symbol: 'gamma_b',
  name: 'Ball diameter over pitch diameter',
  unit: '1',
  given: { D: 'm', d: 'm' },
  text: '0.6 * (D - d) / (D + d)',
  source: 'Balls of 0.3 (D − d) on the middle circle (from memory)',
  validity: 'Single-row deep-groove ball bearings.',
  domain: { D: [19, 30], d: [6, 15] },
  of: (g) => (0.6 * (g.D - g.d)) / (g.D + g.d),
});

/** Half swing from which each ball reaches its neighbour’s path on the outer ring, rad. Below it the races dent. */
export const leastSwing = formula({
  key: 'bearings.leastSwing',
  symbol: 'phi_cr',
  name: 'Half swing that reaches the next ball’s path',
  unit: 'rad',
  given: { Z_b: '1', gamma_b: '1' },
  text: '2 * pi / (Z_b * (1 - gamma_b))',
  source:
    'Kinematics of balls between rings; the critical angle in Harris, Rolling Bearing Analysis (from memory)',
  domain: { Z_b: [5, 15], gamma_b: [0.1, 0.35] },
  of: (g) => (2 * Math.PI) / (g.Z_b * (1 - g.gamma_b)),
});

/** Half swing of a shaft in a move there and back, rad. */
export const halfSwing = formula({
  key: 'bearings.halfSwing',
  symbol: 'phi_h',
  name: 'Half swing of a shaft',
  unit: 'rad',
  given: { phi_move: 'rad', i_out: '1' },
  text: 'phi_move * i_out / 2',
  source: 'Kinematics: from the middle of a move to its end',
  of: (g) => (g.phi_move * g.i_out) / 2,
});
