// What the loop drives: full command to speed, in travels of the output a second, and how far its gain is from the limit.
import { formula } from '../formula';

/** Travels of the output a second at full command, 1/s: the gain of the plant for a command that sets the speed. */
export const plantGain = formula({
  key: 'loop.plantGain',
  symbol: 'K',
  name: 'Travels a second at full command',
  unit: '1/s',
  given: { omega_full: 'rad/s', phi_out: 'rad' },
  text: 'omega_full / phi_out',
  source: 'Definition; the command sets a speed and the drive follows it at once',
  of: (g) => g.omega_full / g.phi_out,
});

/** How often the proportional gain goes into the gain at the limit: 2 is the first setting of Ziegler and Nichols. */
export const gainRoom = formula({
  key: 'loop.gainRoom',
  symbol: 'n_K',
  name: 'Limit of stability over the gain set',
  unit: '1',
  given: { K_u: '1', K_p: '1' },
  text: 'K_u / K_p',
  source: 'Definition',
  of: (g) => g.K_u / g.K_p,
});
