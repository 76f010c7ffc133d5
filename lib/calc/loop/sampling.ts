// What sampling, delay and coarse commands do to a position loop.
import { formula } from '../formula';

/** Smallest step of a command over the output's travel, rad. */
export const commandResolution = formula({
  key: 'loop.commandResolution',
  symbol: 'q_cmd',
  name: 'Command resolution at the output',
  unit: 'rad',
  given: { phi_out: 'rad', N_cmd: '1' },
  text: 'phi_out / 2^N_cmd',
  source: 'Definition',
  of: (g) => g.phi_out / 2 ** g.N_cmd,
});

/** Phase lost at a frequency by a pure delay, rad. */
export const delayPhase = formula({
  key: 'loop.delayPhase',
  symbol: 'phi_d',
  name: 'Phase lost by delay',
  unit: 'rad',
  given: { omega: 'rad/s', t_d: 's' },
  text: 'omega * t_d',
  source: 'Franklin, Powell, Workman, Digital Control of Dynamic Systems, from memory',
  of: (g) => g.omega * g.t_d,
});

/** Phase lost at a frequency by holding the command between samples, rad. */
export const holdPhase = formula({
  key: 'loop.holdPhase',
  symbol: 'phi_zoh',
  name: 'Phase lost by sample and hold',
  unit: 'rad',
  given: { omega: 'rad/s', t_s: 's' },
  text: 'omega * t_s / 2',
  source: 'Franklin, Powell, Workman, Digital Control of Dynamic Systems, from memory',
  of: (g) => (g.omega * g.t_s) / 2,
});

/** Gain of sample and hold at a frequency. */
export const holdGain = formula({
  key: 'loop.holdGain',
  symbol: 'g_zoh',
  name: 'Gain of sample and hold',
  unit: '1',
  given: { omega: 'rad/s', t_s: 's' },
  text: 'sin(omega * t_s / 2) / (omega * t_s / 2)',
  source: 'Franklin, Powell, Workman, Digital Control of Dynamic Systems, from memory',
  validity: 'Below the sampling frequency.',
  domain: { omega: [0.1, 5], t_s: [0.1, 1] },
  of: (g) => Math.sin((g.omega * g.t_s) / 2) / ((g.omega * g.t_s) / 2),
});

/** Delay that sampling and latency come to together, s: half a sample and the latency. */
export const effectiveDelay = formula({
  key: 'loop.effectiveDelay',
  symbol: 't_d',
  name: 'Delay of the loop',
  unit: 's',
  given: { t_s: 's', t_lat: 's' },
  text: 't_s / 2 + t_lat',
  source: 'Franklin, Powell, Workman, Digital Control of Dynamic Systems, from memory',
  of: (g) => g.t_s / 2 + g.t_lat,
});

/** Frequency at which an integrating loop with delay has lost all its phase, rad/s. */
export const ultimateFrequency = formula({
  key: 'loop.ultimateFrequency',
  symbol: 'omega_u',
  name: 'Frequency of oscillation at the limit',
  unit: 'rad/s',
  given: { t_d: 's' },
  text: 'pi / (2 * t_d)',
  source: 'Derived: integrator with delay',
  of: (g) => Math.PI / (2 * g.t_d),
});

/** Greatest proportional gain of a position loop on a plant K/s with delay; beyond it the loop oscillates. */
export const ultimateGain = formula({
  key: 'loop.ultimateGain',
  symbol: 'K_u',
  name: 'Gain at the limit of stability',
  unit: '1',
  given: { t_d: 's', K: '1/s' },
  text: 'pi / (2 * t_d * K)',
  source: 'Derived: integrator with delay',
  validity: 'The drive follows a speed command faster than the loop; no backlash.',
  of: (g) => Math.PI / (2 * g.t_d * g.K),
});

/** Phase left at the crossover of a proportional position loop on K/s with delay, rad. */
export const integratorPhaseMargin = formula({
  key: 'loop.integratorPhaseMargin',
  symbol: 'phi_m',
  name: 'Phase margin of a proportional loop',
  unit: 'rad',
  given: { K_p: '1', K: '1/s', t_d: 's' },
  text: 'pi / 2 - K_p * K * t_d',
  source: 'Derived: integrator with delay',
  of: (g) => Math.PI / 2 - g.K_p * g.K * g.t_d,
});

/** Coefficient of a first-order lag stepped by backward Euler. */
export const lagBackward = formula({
  key: 'loop.lagBackward',
  symbol: 'a_be',
  name: 'Lag by backward Euler',
  unit: '1',
  given: { t_s: 's', tau: 's' },
  text: '1 / (1 + t_s / tau)',
  source: 's replaced by (1 − 1/z)/T',
  of: (g) => 1 / (1 + g.t_s / g.tau),
});

/** Coefficient of a first-order lag stepped by the trapezoidal rule. */
export const lagTrapezoidal = formula({
  key: 'loop.lagTrapezoidal',
  symbol: 'a_tu',
  name: 'Lag by the trapezoidal rule',
  unit: '1',
  given: { t_s: 's', tau: 's' },
  text: '(1 - t_s / (2 * tau)) / (1 + t_s / (2 * tau))',
  source: 'Tustin: s replaced by (2/T)(z − 1)/(z + 1)',
  of: (g) => (1 - g.t_s / (2 * g.tau)) / (1 + g.t_s / (2 * g.tau)),
});

/** Coefficient of a first-order lag with its input held between samples; exact. */
export const lagExact = formula({
  key: 'loop.lagExact',
  symbol: 'a_zoh',
  name: 'Lag with held input',
  unit: '1',
  given: { t_s: 's', tau: 's' },
  text: 'exp(-t_s / tau)',
  source: 'Exact solution',
  of: (g) => Math.exp(-g.t_s / g.tau),
});
