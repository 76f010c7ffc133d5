// Resolution and noise of position sensors.
import { formula } from '../formula';

/** Smallest step of a reading over a travel, rad. */
export const resolution = formula({
  key: 'sensor.resolution',
  symbol: 'q',
  name: 'Resolution',
  unit: 'rad',
  given: { phi: 'rad', N_bit: '1' },
  text: 'phi / 2^N_bit',
  source: 'Definition',
  of: (g) => g.phi / 2 ** g.N_bit,
});

/** Effective value of the rounding error of a reading, rad. */
export const quantisationNoise = formula({
  key: 'sensor.quantisationNoise',
  symbol: 'e_q',
  name: 'Rounding noise',
  unit: 'rad',
  given: { q: 'rad' },
  text: 'q / sqrt(12)',
  source: 'Bennett 1948, uniform rounding error',
  of: (g) => g.q / Math.sqrt(12),
});

/** Signal to rounding noise of a full sine, as a power ratio in decibels (6.02 N + 1.76). */
export const quantisationRatio = formula({
  key: 'sensor.quantisationRatio',
  symbol: 'SNR',
  name: 'Signal to rounding noise in dB',
  unit: '1',
  given: { N_bit: '1' },
  text: '20 * log10(2^N_bit * sqrt(1.5))',
  source: 'Bennett 1948, full-scale sine',
  domain: { N_bit: [4, 26] },
  of: (g) => 20 * Math.log10(2 ** g.N_bit * Math.sqrt(1.5)),
});

/** Steps that a part of the travel uses. */
export const usableSteps = formula({
  key: 'sensor.usableSteps',
  symbol: 'n_q',
  name: 'Steps over the travel used',
  unit: '1',
  given: { phi_used: 'rad', q: 'rad' },
  text: 'phi_used / q',
  source: 'Definition',
  of: (g) => g.phi_used / g.q,
});

/** Noise of a mean of n readings, rad; the noise of single readings being independent. */
export const averagedNoise = formula({
  key: 'sensor.averagedNoise',
  symbol: 'e_mean',
  name: 'Noise of a mean of readings',
  unit: 'rad',
  given: { e_noise: 'rad', n: '1' },
  text: 'e_noise / sqrt(n)',
  source: 'Statistics of independent readings',
  of: (g) => g.e_noise / Math.sqrt(g.n),
});

/** Bits gained by a mean of n readings. */
export const averagingBits = formula({
  key: 'sensor.averagingBits',
  symbol: 'N_gain',
  name: 'Bits gained by a mean of readings',
  unit: '1',
  given: { n: '1' },
  text: 'log2(n) / 2',
  source: 'Statistics of independent readings: 6.02 dB for four readings',
  of: (g) => Math.log2(g.n) / 2,
});

/** Counts a turn of an incremental encoder read on all four edges. */
export const quadratureCounts = formula({
  key: 'sensor.quadratureCounts',
  symbol: 'n_c',
  name: 'Counts a turn, four edges',
  unit: '1',
  given: { n_line: '1' },
  text: '4 * n_line',
  source: 'Definition',
  of: (g) => 4 * g.n_line,
});

/** Smallest step of a speed read by counting over a time, rad/s. */
export const speedStep = formula({
  key: 'sensor.speedStep',
  symbol: 'domega',
  name: 'Step of a counted speed',
  unit: 'rad/s',
  given: { n_c: '1', t: 's' },
  text: '2 * pi / (n_c * t)',
  source: 'Definition',
  of: (g) => (2 * Math.PI) / (g.n_c * g.t),
});

/** Share of a period that a command pulse fills. */
export const pulseShare = formula({
  key: 'sensor.pulseShare',
  symbol: 's_pulse',
  name: 'Share of the period filled by a pulse',
  unit: '1',
  given: { t_pulse: 's', f: 'Hz' },
  text: 't_pulse * f',
  source: 'Definition; 1 ms to 2 ms at 50 Hz is common practice, no source',
  of: (g) => g.t_pulse * g.f,
});

/** Angle that one tick of a pulse timer stands for, rad. */
export const pulseStep = formula({
  key: 'sensor.pulseStep',
  symbol: 'q_pulse',
  name: 'Angle of one timer tick',
  unit: 'rad',
  given: { phi: 'rad', t_tick: 's', t_span: 's' },
  text: 'phi * t_tick / t_span',
  source: 'Definition; pulse span 1 ms for the travel is common practice, no source',
  of: (g) => (g.phi * g.t_tick) / g.t_span,
});

/** Greatest age of a command that comes once a period, s. */
export const commandAge = formula({
  key: 'sensor.commandAge',
  symbol: 't_age',
  name: 'Greatest age of a command',
  unit: 's',
  given: { f: 'Hz' },
  text: '1 / f',
  source: 'Definition',
  of: (g) => 1 / g.f,
});
