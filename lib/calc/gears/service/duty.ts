// From the duty at the output to what one gear sees: moves, passes of a tooth, speeds, share of time in motion.
import { formula } from '../../formula';

const TRADE = 'Kinematics of gears in series';

/** Moves within L_h (s) of work on a duty of moves of t_move (s) with rests of t_rest (s) between them. */
export const movesInHours = formula({
  key: 'gears.movesInHours',
  symbol: 'N_moves',
  name: 'Moves in the hours of work',
  unit: '1',
  given: { L_h: 's', t_move: 's', t_rest: 's' },
  text: 'L_h / (t_move + t_rest)',
  source: 'Definition',
  validity: 'Hours of work count the rests between the moves.',
  of: (g) => g.L_h / (g.t_move + g.t_rest),
});

/**
 * Times that a tooth is loaded in N_moves moves of phi_move (rad) at the output, i_out being the gear's turns for one of
 * the output. A move of less than one turn of the gear loads the teeth in its sector once.
 */
export const toothPasses = formula({
  key: 'gears.toothPasses',
  symbol: 'N_L',
  name: 'Load cycles of a tooth over the life',
  unit: '1',
  given: { N_moves: '1', phi_move: 'rad', i_out: '1' },
  text: 'N_moves * max(1, phi_move / (2 * pi) * i_out)',
  source: TRADE,
  domain: { phi_move: [0.1, 60] },
  of: (g) => g.N_moves * Math.max(1, (g.phi_move / (2 * Math.PI)) * g.i_out),
});

/** Speed (rad/s) of a pinion whose wheel turns at omega_2 (rad/s). */
export const pinionSpeed = formula({
  key: 'gears.pinionSpeed',
  symbol: 'omega_1',
  name: 'Speed of the pinion',
  unit: 'rad/s',
  given: { omega_2: 'rad/s', u: '1' },
  text: 'omega_2 * u',
  source: TRADE,
  of: (g) => g.omega_2 * g.u,
});

/** Turns of a gear for one turn of the output: those of the next gear times the ratio between them. */
export const turnsPerOutputTurn = formula({
  key: 'gears.turnsPerOutputTurn',
  symbol: 'i_out',
  name: 'Turns for one turn of the output',
  unit: '1',
  given: { i_after: '1', u: '1' },
  text: 'i_after * u',
  source: TRADE,
  of: (g) => g.i_after * g.u,
});

/** Greatest share of any stretch of t_ref (s) in which the gears run; moves longer than t_ref count as running throughout. */
export const runningShare = formula({
  key: 'gears.runningShare',
  symbol: 'ED',
  name: 'Share of the reference time in motion',
  unit: '1',
  given: { t_move: 's', t_rest: 's', t_ref: 's' },
  text: 'min(1, t_move / min(t_move + t_rest, t_ref))',
  source: 'VDI 2736 Part 2:2014, relative duty over ten minutes (from memory)',
  of: (g) => Math.min(1, g.t_move / Math.min(g.t_move + g.t_rest, g.t_ref)),
});

/** Mechanical power (W) that leaves the last wheel at the peak of the duty. */
export const outputPower = formula({
  key: 'gears.outputPower',
  symbol: 'P_out',
  name: 'Power at the output',
  unit: 'W',
  given: { T_peak: 'N m', omega_out: 'rad/s' },
  text: 'T_peak * omega_out',
  source: 'Mechanics',
  of: (g) => g.T_peak * g.omega_out,
});

/** Efficiency of a stage: its mesh and the bearings of one shaft. */
export const stageEfficiency = formula({
  key: 'gears.stageEfficiency',
  symbol: 'eta_stage',
  name: 'Efficiency of the stage',
  unit: '1',
  given: { eta: '1', eta_bearing: '1' },
  text: 'eta * eta_bearing',
  source: 'Roloff, Matek, Maschinenelemente, product rule (from memory)',
  domain: { eta: [0.5, 1], eta_bearing: [0.9, 1] },
  of: (g) => g.eta * g.eta_bearing,
});

export const serviceDutyFormulas = [
  movesInHours,
  toothPasses,
  pinionSpeed,
  turnsPerOutputTurn,
  runningShare,
  outputPower,
  stageEfficiency,
] as const;
