// Frequency response of an open loop with real poles, and its margins.

/** gain · Π(s − zero) / Π(s − pole) · exp(−s delay); poles and zeros real and at most 0, in rad/s; delay in s. */
export interface OpenLoop {
  readonly gain: number;
  readonly poles: readonly number[];
  readonly zeros?: readonly number[];
  readonly delay?: number;
}

/** Magnitude at a frequency in rad/s (above 0). */
export function magnitude(loop: OpenLoop, omega: number): number {
  const product = (roots: readonly number[]) => roots.reduce((m, root) => m * Math.hypot(omega, root), 1);
  return (Math.abs(loop.gain) * product(loop.zeros ?? [])) / product(loop.poles);
}

/** Phase in rad at a frequency in rad/s (above 0), counted continuously from low frequency; positive gain. */
export function phase(loop: OpenLoop, omega: number): number {
  const sum = (roots: readonly number[]) => roots.reduce((p, root) => p + Math.atan2(omega, -root), 0);
  return sum(loop.zeros ?? []) - sum(loop.poles) - omega * (loop.delay ?? 0);
}

export interface Margins {
  /** rad/s where the magnitude falls through 1. */
  readonly gainCrossover: number | undefined;
  /** rad left there before −180°. */
  readonly phaseMargin: number | undefined;
  /** rad/s where the phase falls through −180°. */
  readonly phaseCrossover: number | undefined;
  /** Factor by which the gain may grow before the loop oscillates. */
  readonly gainMargin: number | undefined;
}

/**
 * Margins between two frequencies (rad/s, 0 < low < high), by the first fall through 1 and through −180° on a grid of
 * 40 points a decade, refined by halving. What is not found there is `undefined`.
 */
export function margins(loop: OpenLoop, low = 1e-3, high = 1e6): Margins {
  const gainCrossover = firstFall((w) => magnitude(loop, w) - 1, low, high);
  const phaseCrossover = firstFall((w) => phase(loop, w) + Math.PI, low, high);
  return {
    gainCrossover,
    phaseMargin: gainCrossover === undefined ? undefined : Math.PI + phase(loop, gainCrossover),
    phaseCrossover,
    gainMargin: phaseCrossover === undefined ? undefined : 1 / magnitude(loop, phaseCrossover),
  };
}

function firstFall(f: (omega: number) => number, low: number, high: number): number | undefined {
  const steps = Math.ceil(40 * Math.log10(high / low));
  const at = (i: number) => low * (high / low) ** (i / steps);
  for (let i = 0; i < steps; i += 1) {
    let before = at(i);
    let after = at(i + 1);
    if (!(f(before) > 0 && f(after) <= 0)) continue;
    for (let n = 0; n < 60; n += 1) {
      const middle = Math.sqrt(before * after);
      if (f(middle) > 0) before = middle;
      else after = middle;
    }
    return after;
  }
  return undefined;
}
