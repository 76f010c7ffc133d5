// What a move asks of the actuator as a whole.
import { formula } from '../formula';

/** Greatest torque of a move at the output, N m: a load held throughout and all inertia accelerated, the rotor's included. */
export const moveDemand = formula({
  key: 'motion.moveDemand',
  symbol: 'T_need',
  name: 'Greatest torque of a move, rotor included',
  unit: 'N m',
  given: { T_L: 'N m', J_out: 'kg m^2', alpha_out: 'rad/s^2' },
  text: 'T_L + J_out * alpha_out',
  source: 'Newton’s law',
  of: (g) => g.T_L + g.J_out * g.alpha_out,
});
