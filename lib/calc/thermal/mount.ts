// Heat that leaves through what the motor is bolted to, and how warm that gets.
import { formula } from '../formula';

const paths = 'Thermal resistances in series and parallel';

/** Resistance from the case to the air by both ways, K/W: from its own surface, and through the mount. */
export const toAmbient = formula({
  key: 'thermal.toAmbient',
  symbol: 'R_ca_all',
  name: 'Thermal resistance, case to air by both ways',
  unit: 'K/W',
  given: { R_ca: 'K/W', R_cm: 'K/W', R_ma: 'K/W' },
  text: '1 / (1 / R_ca + 1 / (R_cm + R_ma))',
  source: paths,
  validity:
    'The mount’s own heat capacity is left out: it follows the case at once, which is on the safe side for it.',
  of: (g) => 1 / (1 / g.R_ca + 1 / (g.R_cm + g.R_ma)),
});

/** Share of the case's rise that the mount takes on. */
export const mountShare = formula({
  key: 'thermal.mountShare',
  symbol: 's_m',
  name: 'Rise of the mount over that of the case',
  unit: '1',
  given: { R_cm: 'K/W', R_ma: 'K/W' },
  text: 'R_ma / (R_cm + R_ma)',
  source: paths,
  of: (g) => g.R_ma / (g.R_cm + g.R_ma),
});

/** Rise from ambient that a limit leaves, K; 0 when the surroundings are as warm already. */
export const riseTo = formula({
  key: 'thermal.riseTo',
  symbol: 'dtheta_to',
  name: 'Rise up to a limit',
  unit: 'K',
  given: { theta_lim: 'K', theta_amb: 'K' },
  text: 'max(theta_lim - theta_amb, 0 * theta_amb)',
  source: 'Definition',
  domain: { theta_lim: [330, 450], theta_amb: [260, 320] },
  of: (g) => Math.max(g.theta_lim - g.theta_amb, 0),
});
