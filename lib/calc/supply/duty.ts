// What a duty does to the supply: how warm the leads get and how long the pack lasts.
import { formula } from '../formula';

/**
 * Rise of a lead in free air after long time, K. rho at the warm lead, h the heat given off over the insulation's
 * surface, s_o the outer diameter over that of the copper.
 */
export const leadRise = formula({
  key: 'supply.leadRise',
  symbol: 'dtheta_l',
  name: 'Rise of a lead in free air',
  unit: 'K',
  given: { I_bat: 'A', rho: 'ohm m', A_w: 'm^2', h: 'W/(m^2 K)', s_o: '1' },
  text: 'I_bat^2 * rho / (A_w * h * s_o * sqrt(4 * pi * A_w))',
  source: 'Heat balance of a length of lead, derived; bundled or covered leads get hotter',
  of: (g) => (g.I_bat ** 2 * g.rho) / (g.A_w * g.h * g.s_o * Math.sqrt(4 * Math.PI * g.A_w)),
});

/** Temperature of a lead, K. */
export const leadTemperature = formula({
  key: 'supply.leadTemperature',
  symbol: 'theta_l',
  name: 'Temperature of a lead',
  unit: 'K',
  given: { theta_amb: 'K', dtheta_l: 'K' },
  text: 'theta_amb + dtheta_l',
  source: 'Definition',
  domain: { theta_amb: [260, 320] },
  of: (g) => g.theta_amb + g.dtheta_l,
});

/** Time a pack lasts, s: the usable share s_use of its charge Q over the mean current, drawn a share s_move of the time. */
export const runTime = formula({
  key: 'supply.runTime',
  symbol: 't_run',
  name: 'Run time of the pack',
  unit: 's',
  given: { s_use: '1', Q: 'C', s_move: '1', I_bat: 'A' },
  text: 's_use * Q / (s_move * I_bat)',
  source: 'Definition of charge',
  of: (g) => (g.s_use * g.Q) / (g.s_move * g.I_bat),
});

/** Power that a battery current limit lets through, W: at the full voltage, before sag. */
export const batteryPower = formula({
  key: 'supply.batteryPower',
  symbol: 'P_bat',
  name: 'Power at a battery current limit',
  unit: 'W',
  given: { U: 'V', I_bat: 'A' },
  text: 'U * I_bat',
  source: 'Definition of power',
  of: (g) => g.U * g.I_bat,
});
