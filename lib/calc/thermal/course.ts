// The course of winding and case temperature over a sequence of loads: two lumps, warm copper, closed form a phase.

/** Thermal data of a motor: resistances in K/W, capacities in J/K. */
export interface TwoNodes {
  readonly windingToCase: number;
  readonly caseToAmbient: number;
  readonly windingCapacity: number;
  readonly caseCapacity: number;
}

/** What heats the motor. */
export interface HeatLoad {
  /** Copper loss with the winding at ambient, W. */
  readonly copperLoss: number;
  /** Its growth, 1/K, referred to ambient: alpha20 / (1 + alpha20 (ambient − 20 °C)). 0 for constant loss. */
  readonly growth: number;
  /** Loss that arises in the case and does not grow (drag, iron), W. */
  readonly caseLoss: number;
}

/** Rises above ambient, K. */
export interface Rises {
  readonly winding: number;
  readonly case: number;
}

export const cold: Rises = { winding: 0, case: 0 };

/**
 * Rises after `time` s (≥ 0) of one load from the rises `from`. Exact solution of the two linear equations by their
 * eigenvalues, which are real and apart because each lump warms the other; it holds below and beyond runaway alike.
 */
export function risesAfter(nodes: TwoNodes, load: HeatLoad, from: Rises, time: number): Rises {
  // x' = A x + b with x = (winding, case).
  const { windingToCase: r1, caseToAmbient: r2, windingCapacity: c1, caseCapacity: c2 } = nodes;
  const a = (load.growth * load.copperLoss - 1 / r1) / c1;
  const b = 1 / (r1 * c1);
  const c = 1 / (r1 * c2);
  const d = -(1 / r1 + 1 / r2) / c2;
  const mean = (a + d) / 2;
  const half = Math.sqrt(((a - d) / 2) ** 2 + b * c);
  // The larger eigenvalue without cancellation; the other from the determinant, which is the product of the two.
  const fast = mean < 0 ? mean - half : mean + half;
  const determinant = (-load.growth * load.copperLoss * (1 / r1 + 1 / r2) + 1 / (r1 * r2)) / (c1 * c2);
  const slow = determinant / fast;

  const apply = (atSlow: number, atFast: number, w: number, h: number): readonly [number, number] => {
    // f(A) = (f(slow)(A − fast) − f(fast)(A − slow)) / (slow − fast)
    const span = slow - fast;
    const p = (atSlow - atFast) / span;
    const q = (atFast * slow - atSlow * fast) / span;
    return [p * (a * w + b * h) + q * w, p * (c * w + d * h) + q * h];
  };
  const [wFree, hFree] = apply(Math.exp(slow * time), Math.exp(fast * time), from.winding, from.case);
  const [wForced, hForced] = apply(
    integral(slow, time),
    integral(fast, time),
    load.copperLoss / c1,
    load.caseLoss / c2,
  );
  return { winding: wFree + wForced, case: hFree + hForced };
}

export interface HeatPhase {
  readonly load: HeatLoad;
  /** s, above 0. */
  readonly duration: number;
}

export interface CoursePoint extends Rises {
  /** s from the start. */
  readonly time: number;
}

/** Rises over phases in sequence from `start`, with `samples` (≥ 1) points a phase besides the first. */
export function heatCourse(
  nodes: TwoNodes,
  phases: readonly HeatPhase[],
  samples: number,
  start: Rises = cold,
): readonly CoursePoint[] {
  const points: CoursePoint[] = [{ time: 0, ...start }];
  let from = start;
  let begun = 0;
  for (const { load, duration } of phases) {
    for (let i = 1; i <= samples; i += 1) {
      const time = (duration * i) / samples;
      points.push({ time: begun + time, ...risesAfter(nodes, load, from, time) });
    }
    from = risesAfter(nodes, load, from, duration);
    begun += duration;
  }
  return points;
}

/**
 * Seconds until the winding reaches a rise of `limit` K under one load, or `undefined` if it has not within `horizon` s.
 * Found by halving, to a millionth of the time; the winding must warm steadily, as it does from cold.
 */
export function timeToLimit(
  nodes: TwoNodes,
  load: HeatLoad,
  limit: number,
  horizon: number,
  start: Rises = cold,
): number | undefined {
  if (start.winding >= limit) return 0;
  const reached = (time: number) => risesAfter(nodes, load, start, time).winding >= limit;
  if (!reached(horizon)) return undefined;
  let before = 0;
  let after = horizon;
  while (after - before > 1e-6 * after) {
    const middle = (before + after) / 2;
    if (reached(middle)) after = middle;
    else before = middle;
  }
  return after;
}

/** ∫ exp(k s) ds from 0 to t, also where k is about zero. */
function integral(k: number, t: number): number {
  return Math.abs(k * t) < 1e-12 ? t : Math.expm1(k * t) / k;
}
