// What a deep-groove ball bearing carries: radial and thrust load taken together, moving and standing.
import { formula } from '../formula';

/** Force on a bearing with the shocks of its duty, N, whichever way it acts. */
export const shockedLoad = formula({
  key: 'bearings.shockedLoad',
  symbol: 'F_K',
  name: 'Force on a bearing, shocks included',
  unit: 'N',
  given: { K_A: '1', F: 'N' },
  text: 'K_A * abs(F)',
  source: 'Common practice, no source: the application factor of the teeth on the forces they cause',
  of: (g) => g.K_A * Math.abs(g.F),
});

/** Force on a bearing at another torque than the peak, N: forces of teeth and belts grow with the torque. */
export const loadAtTorque = formula({
  key: 'bearings.loadAtTorque',
  symbol: 'P_i',
  name: 'Load at a torque of the spectrum',
  unit: 'N',
  given: { P: 'N', T_i: 'N m', T_peak: 'N m' },
  text: 'P * T_i / T_peak',
  source: 'Statics',
  of: (g) => (g.P * g.T_i) / g.T_peak,
});

/** How much thrust a bearing carries for its static rating, the way into the table of e and Y. */
export const thrustRatio = formula({
  key: 'bearings.thrustRatio',
  symbol: 'x_a',
  name: 'Thrust over static rating',
  unit: '1',
  given: { f_0: '1', F_a: 'N', C_0: 'N' },
  text: 'f_0 * F_a / C_0',
  source: 'ISO 281:2007, Table 3 (from memory)',
  of: (g) => (g.f_0 * g.F_a) / g.C_0,
});

/**
 * Equivalent radial load of a turning bearing, N. Thrust below e_a times the radial load is carried for nothing; above
 * it counts with Y and the radial load with 0.56. e_a and Y from `thrustFactors`.
 */
export const equivalentLoad = formula({
  key: 'bearings.equivalentLoad',
  symbol: 'P',
  name: 'Equivalent load of a turning bearing',
  unit: 'N',
  given: { F_r: 'N', F_a: 'N', e_a: '1', Y: '1' },
  text: 'F_a <= e_a * F_r ? F_r : 0.56 * F_r + Y * F_a',
  source: 'ISO 281:2007, 5.2 and Table 3 (from memory)',
  validity: 'Single-row deep-groove ball bearings, normal clearance.',
  domain: { e_a: [0.19, 0.44], Y: [1, 2.3] },
  of: (g) => (g.F_a <= g.e_a * g.F_r ? g.F_r : 0.56 * g.F_r + g.Y * g.F_a),
});

/** Equivalent load of a standing bearing, N. */
export const staticLoad = formula({
  key: 'bearings.staticLoad',
  symbol: 'P_0',
  name: 'Equivalent static load',
  unit: 'N',
  given: { F_r: 'N', F_a: 'N' },
  text: 'max(0.6 * F_r + 0.5 * F_a, F_r)',
  source: 'ISO 76:2006, 5.2 and Table 3 (from memory)',
  validity: 'Single-row deep-groove ball bearings.',
  of: (g) => Math.max(0.6 * g.F_r + 0.5 * g.F_a, g.F_r),
});

/** How far a bearing is from lasting dents under its greatest load, as a factor. */
export const staticFactor = formula({
  key: 'bearings.staticFactor',
  symbol: 's_0',
  name: 'Static factor of a bearing',
  unit: '1',
  given: { C_0: 'N', P_0: 'N' },
  text: 'C_0 / P_0',
  source: 'ISO 76:2006, 8 (from memory)',
  of: (g) => g.C_0 / g.P_0,
});

/** Thrust that a bearing should carry at most, N; s_a is the share of its static rating. */
export const greatestThrust = formula({
  key: 'bearings.greatestThrust',
  symbol: 'F_a_max',
  name: 'Greatest thrust on a bearing',
  unit: 'N',
  given: { s_a: '1', C_0: 'N' },
  text: 's_a * C_0',
  source: 'Bearing makers’ catalogues, from memory: 0.25 of C_0 for small and light series',
  of: (g) => g.s_a * g.C_0,
});

/** One row of a table of thrust factors: the ratio f_0 F_a/C_0, and e and Y there. */
export interface ThrustRow {
  readonly ratio: number;
  readonly e: number;
  readonly Y: number;
}

export interface ThrustFactors {
  readonly e_a: number;
  readonly Y: number;
}

/** e or Y at a thrust ratio x_a between two rows of its table. */
export const thrustFactor = formula({
  key: 'bearings.thrustFactor',
  symbol: 'Y_x',
  name: 'Thrust factor between two rows',
  unit: '1',
  given: { Y_1: '1', Y_2: '1', x_1: '1', x_2: '1', x_a: '1' },
  text: 'Y_1 + (x_a - x_1) / (x_2 - x_1) * (Y_2 - Y_1)',
  source: 'ISO 281:2007, Table 3, note on interpolation (from memory)',
  domain: { x_1: [0.1, 1], x_2: [2, 3], x_a: [1, 2] },
  of: (g) => g.Y_1 + ((g.x_a - g.x_1) / (g.x_2 - g.x_1)) * (g.Y_2 - g.Y_1),
});

/**
 * The rows of a table between which a thrust ratio x_a lies. Below the first row that row alone (`before` missing), as
 * makers use it; `undefined` above the last, where the table says nothing.
 */
export function thrustRows(
  rows: readonly ThrustRow[],
  x_a: number,
): { readonly before: ThrustRow | undefined; readonly after: ThrustRow } | undefined {
  let before: ThrustRow | undefined;
  for (const after of rows) {
    if (x_a <= after.ratio) return { before, after };
    before = after;
  }
  return undefined;
}

/** e and Y for a thrust ratio x_a, by straight lines between `rows` (rising in ratio); `undefined` above the last. */
export function thrustFactors(rows: readonly ThrustRow[], x_a: number): ThrustFactors | undefined {
  const found = thrustRows(rows, x_a);
  if (found === undefined) return undefined;
  const { before, after } = found;
  if (before === undefined) return { e_a: after.e, Y: after.Y };
  const at = { x_1: before.ratio, x_2: after.ratio, x_a };
  return {
    e_a: thrustFactor.of({ ...at, Y_1: before.e, Y_2: after.e }),
    Y: thrustFactor.of({ ...at, Y_1: before.Y, Y_2: after.Y }),
  };
}
