// First settings of a controller by Ziegler and Nichols: from the limit of stability, or from a step of the open plant.
// They are brisk, with little damping: start lower on anything that can hurt.
import { formula } from '../formula';

const closed =
  'Ziegler and Nichols, closed-loop table (Ogata, Example 8-1), from memory; PI line as in an erratum to Åström and Murray';
const open =
  'Ziegler and Nichols, step-response table, from memory; PI line as in an erratum to Åström and Murray';

/** Gain of P from the limit of stability. */
export const limitGainP = formula({
  key: 'loop.limitGainP',
  symbol: 'K_p',
  name: 'Gain of P from the limit of stability',
  unit: '1',
  given: { K_u: '1' },
  text: '0.5 * K_u',
  source: closed,
  of: (g) => 0.5 * g.K_u,
});

/** Gain of PI from the limit of stability. */
export const limitGainPI = formula({
  key: 'loop.limitGainPI',
  symbol: 'K_p',
  name: 'Gain of PI from the limit of stability',
  unit: '1',
  given: { K_u: '1' },
  text: '0.45 * K_u',
  source: closed,
  of: (g) => 0.45 * g.K_u,
});

/** Integral time of PI from the limit of stability. */
export const limitResetPI = formula({
  key: 'loop.limitResetPI',
  symbol: 'T_i',
  name: 'Integral time of PI from the limit of stability',
  unit: 's',
  given: { P_u: 's' },
  text: 'P_u / 1.2',
  source: closed,
  of: (g) => g.P_u / 1.2,
});

/** Gain of PID from the limit of stability. */
export const limitGainPID = formula({
  key: 'loop.limitGainPID',
  symbol: 'K_p',
  name: 'Gain of PID from the limit of stability',
  unit: '1',
  given: { K_u: '1' },
  text: '0.6 * K_u',
  source: closed,
  of: (g) => 0.6 * g.K_u,
});

/** Integral time of PID from the limit of stability. */
export const limitResetPID = formula({
  key: 'loop.limitResetPID',
  symbol: 'T_i',
  name: 'Integral time of PID from the limit of stability',
  unit: 's',
  given: { P_u: 's' },
  text: 'P_u / 2',
  source: closed,
  of: (g) => g.P_u / 2,
});

/** Derivative time of PID from the limit of stability. */
export const limitRatePID = formula({
  key: 'loop.limitRatePID',
  symbol: 'T_d',
  name: 'Derivative time of PID from the limit of stability',
  unit: 's',
  given: { P_u: 's' },
  text: 'P_u / 8',
  source: closed,
  of: (g) => g.P_u / 8,
});

/** Gain of P from a step. */
export const stepGainP = formula({
  key: 'loop.stepGainP',
  symbol: 'K_p',
  name: 'Gain of P from a step',
  unit: '1',
  given: { tau: 's', K_s: '1', t_d: 's' },
  text: 'tau / (K_s * t_d)',
  source: open,
  of: (g) => g.tau / (g.K_s * g.t_d),
});

/** Gain of PI from a step. */
export const stepGainPI = formula({
  key: 'loop.stepGainPI',
  symbol: 'K_p',
  name: 'Gain of PI from a step',
  unit: '1',
  given: { tau: 's', K_s: '1', t_d: 's' },
  text: '0.9 * tau / (K_s * t_d)',
  source: open,
  of: (g) => (0.9 * g.tau) / (g.K_s * g.t_d),
});

/** Integral gain of PI from a step. */
export const stepIntegralPI = formula({
  key: 'loop.stepIntegralPI',
  symbol: 'K_i',
  name: 'Integral gain of PI from a step',
  unit: '1/s',
  given: { tau: 's', K_s: '1', t_d: 's' },
  text: '0.27 * tau / (K_s * t_d^2)',
  source: open,
  of: (g) => (0.27 * g.tau) / (g.K_s * g.t_d ** 2),
});

/** Gain of PID from a step. */
export const stepGainPID = formula({
  key: 'loop.stepGainPID',
  symbol: 'K_p',
  name: 'Gain of PID from a step',
  unit: '1',
  given: { tau: 's', K_s: '1', t_d: 's' },
  text: '1.2 * tau / (K_s * t_d)',
  source: open,
  of: (g) => (1.2 * g.tau) / (g.K_s * g.t_d),
});

/** Integral time of PID from a step. */
export const stepResetPID = formula({
  key: 'loop.stepResetPID',
  symbol: 'T_i',
  name: 'Integral time of PID from a step',
  unit: 's',
  given: { t_d: 's' },
  text: '2 * t_d',
  source: open,
  of: (g) => 2 * g.t_d,
});

/** Derivative time of PID from a step. */
export const stepRatePID = formula({
  key: 'loop.stepRatePID',
  symbol: 'T_d',
  name: 'Derivative time of PID from a step',
  unit: 's',
  given: { t_d: 's' },
  text: '0.5 * t_d',
  source: open,
  of: (g) => 0.5 * g.t_d,
});
