// What a hub is asked to pass on: the torque of its shaft with the shocks of its duty; and the shear its material bears.
import { formula } from '../../formula';

/** Torque a hub must pass on, N m; K_A factor for shocks, as for the teeth. */
export const hubTorque = formula({
  key: 'shafts.hubTorque',
  symbol: 'T_h',
  name: 'Torque on a hub',
  unit: 'N m',
  given: { K_A: '1', T: 'N m' },
  text: 'K_A * T',
  source: 'Roloff, Matek, Maschinenelemente: application factor on shaft and hub (from memory)',
  of: (g) => g.K_A * g.T,
});

/** Shear strength from a tensile or yield strength, Pa. */
export const shearStrength = formula({
  key: 'shafts.shearStrength',
  symbol: 'tau_m',
  name: 'Shear strength',
  unit: 'Pa',
  given: { k_s: '1', R: 'Pa' },
  text: 'k_s * R',
  source: 'Metals 0.577 by distortion energy; prints by the rules of printing (from memory)',
  domain: { k_s: [0.4, 0.8] },
  of: (g) => g.k_s * g.R,
});
