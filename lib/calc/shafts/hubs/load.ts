// What a hub is asked to pass on: the torque of its shaft with the shocks of its duty.
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
