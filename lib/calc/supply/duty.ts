// What a duty draws from the supply over moves and rests, and how long the pack lasts.
import { formula } from '../formula';

/** Mean battery current of moves and rests, A: I_run in motion, I_hold for the longest hold of each rest. */
export const meanCurrent = formula({
  key: 'supply.meanCurrent',
  symbol: 'I_mean',
  name: 'Mean battery current',
  unit: 'A',
  given: { I_run: 'A', I_hold: 'A', t_move: 's', t_held: 's', t_rest: 's' },
  text: '(I_run * t_move + I_hold * min(t_held, t_rest)) / (t_move + t_rest)',
  source: 'Definition of the mean',
  of: (g) => (g.I_run * g.t_move + g.I_hold * Math.min(g.t_held, g.t_rest)) / (g.t_move + g.t_rest),
});

/** Effective battery current of moves and rests, A: of each move a share s_pk at the peak, the rest of it running. */
export const effectiveCurrent = formula({
  key: 'supply.effectiveCurrent',
  symbol: 'I_rms',
  name: 'Effective battery current',
  unit: 'A',
  given: { s_pk: '1', I_pk: 'A', I_run: 'A', I_hold: 'A', t_move: 's', t_held: 's', t_rest: 's' },
  text: 'sqrt(((s_pk * I_pk^2 + (1 - s_pk) * I_run^2) * t_move + I_hold^2 * min(t_held, t_rest)) / (t_move + t_rest))',
  source: 'Definition of the effective value',
  domain: { s_pk: [0, 1] },
  of: (g) =>
    Math.sqrt(
      ((g.s_pk * g.I_pk ** 2 + (1 - g.s_pk) * g.I_run ** 2) * g.t_move +
        g.I_hold ** 2 * Math.min(g.t_held, g.t_rest)) /
        (g.t_move + g.t_rest),
    ),
});

/** Time a pack lasts, s: the usable share s_use of its charge Q over the mean current. */
export const runTime = formula({
  key: 'supply.runTime',
  symbol: 't_run',
  name: 'Run time of the pack',
  unit: 's',
  given: { s_use: '1', Q: 'C', I_mean: 'A' },
  text: 's_use * Q / I_mean',
  source: 'Definition of charge',
  of: (g) => (g.s_use * g.Q) / g.I_mean,
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
