// Describing functions: gain and phase that a kink in the loop shows to a sine of a given amplitude.
import { formula } from '../formula';

const gelb = 'Gelb and Vander Velde; Slotine and Li, Applied Nonlinear Control, ch. 5, from memory';

/** Gain of play for a sine: b half the gap, A amplitude, in the same unit. */
export const backlashGain = formula({
  key: 'loop.backlashGain',
  symbol: 'g_bl',
  name: 'Gain of backlash',
  unit: '1',
  given: { b: 'rad', A: 'rad' },
  text: 'sqrt(((pi / 2 - asin(2 * b / A - 1) - (2 * b / A - 1) * sqrt(1 - (2 * b / A - 1)^2)) / pi)^2 + (4 * b / (pi * A) * (b / A - 1))^2)',
  source: gelb,
  validity: 'A above b; a smaller sine is lost in the gap.',
  domain: { b: [0.1, 1], A: [1.2, 10] },
  of: (g) => Math.hypot(inPhase(g.b / g.A), quadrature(g.b / g.A)),
});

/** Phase of play for a sine, rad, negative: the output lags. */
export const backlashPhase = formula({
  key: 'loop.backlashPhase',
  symbol: 'phi_bl',
  name: 'Phase of backlash',
  unit: 'rad',
  given: { b: 'rad', A: 'rad' },
  text: 'atan(4 * b / A * (b / A - 1) / (pi / 2 - asin(2 * b / A - 1) - (2 * b / A - 1) * sqrt(1 - (2 * b / A - 1)^2)))',
  source: gelb,
  validity: 'A above b; a smaller sine is lost in the gap.',
  domain: { b: [0.1, 1], A: [1.2, 10] },
  of: (g) => Math.atan(quadrature(g.b / g.A) / inPhase(g.b / g.A)),
});

/** Gain of a relay of height M for a sine of amplitude A. */
export const relayGain = formula({
  key: 'loop.relayGain',
  symbol: 'g_rel',
  name: 'Gain of a relay',
  unit: '1',
  given: { M: '1', A: '1' },
  text: '4 * M / (pi * A)',
  source: gelb,
  of: (g) => (4 * g.M) / (Math.PI * g.A),
});

/** Gain of a relay with a dead band of half width d. */
export const relayDeadBandGain = formula({
  key: 'loop.relayDeadBandGain',
  symbol: 'g_rel',
  name: 'Gain of a relay with a dead band',
  unit: '1',
  given: { M: '1', A: '1', d: '1' },
  text: '4 * M / (pi * A) * sqrt(1 - (d / A)^2)',
  source: gelb,
  validity: 'A above d.',
  domain: { d: [0.1, 1], A: [1.1, 10] },
  of: (g) => ((4 * g.M) / (Math.PI * g.A)) * Math.sqrt(1 - (g.d / g.A) ** 2),
});

/** Gain of a dead band of half width d for a sine of amplitude A. */
export const deadBandGain = formula({
  key: 'loop.deadBandGain',
  symbol: 'g_db',
  name: 'Gain of a dead band',
  unit: '1',
  given: { d: 'rad', A: 'rad' },
  text: '1 - 2 / pi * (asin(d / A) + d / A * sqrt(1 - (d / A)^2))',
  source: gelb,
  validity: 'A above d.',
  domain: { d: [0.1, 1], A: [1.1, 10] },
  of: (g) => {
    const r = g.d / g.A;
    return 1 - (2 / Math.PI) * (Math.asin(r) + r * Math.sqrt(1 - r ** 2));
  },
});

/** Gain of a rounding quantiser of step q for a sine of amplitude A (any A > 0): 0 below q/2, at most 4/π. */
export function quantiserGain(q: number, A: number): number {
  let sum = 0;
  for (let i = 1; (2 * i - 1) * q < 2 * A; i += 1) sum += Math.sqrt(1 - (((2 * i - 1) * q) / (2 * A)) ** 2);
  return ((4 * q) / (Math.PI * A)) * sum;
}

/** Amplitude, in steps, at which a quantiser's gain is greatest: 1/√2, with gain 4/π. Source: as above. */
export const quantiserPeakAmplitude = Math.SQRT1_2;

function inPhase(ratio: number): number {
  const r = 2 * ratio - 1;
  return (Math.PI / 2 - Math.asin(r) - r * Math.sqrt(1 - r ** 2)) / Math.PI;
}

function quadrature(ratio: number): number {
  return ((4 * ratio) / Math.PI) * (ratio - 1);
}
