// Clamp hubs: what their screws press with, and what that does to the hub’s bore.
import { formula } from '../../formula';

/** Force of all screws of a clamp together, N; F_i preload of one. */
export const clampForce = formula({
  key: 'shafts.clampForce',
  symbol: 'F_cl',
  name: 'Force of the screws of a clamp',
  unit: 'N',
  given: { n: '1', F_i: 'N' },
  text: 'n * F_i',
  source: 'Sum over equal screws',
  of: (g) => g.n * g.F_i,
});

/** Mean pressure of a clamp on its shaft, Pa; F all screws together. */
export const clampBorePressure = formula({
  key: 'shafts.clampBorePressure',
  symbol: 'p_cl',
  name: 'Pressure of a clamp on its shaft',
  unit: 'Pa',
  given: { F: 'N', d: 'm', l: 'm' },
  text: 'F / (d * l)',
  source: 'Force over the projected area; statics',
  of: (g) => g.F / (g.d * g.l),
});
