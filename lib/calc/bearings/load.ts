// What a deep-groove ball bearing carries: radial and thrust load taken together, moving and standing.
import { formula } from '../formula';

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

/**
 * e and Y for a thrust ratio x_a, by straight lines between `rows` (rising in ratio). Below the first row its values
 * hold, as makers use it; `undefined` above the last, where the table says nothing.
 * Source: ISO 281:2007, Table 3, note on interpolation (from memory).
 */
export function thrustFactors(rows: readonly ThrustRow[], x_a: number): ThrustFactors | undefined {
  let below: ThrustRow | undefined;
  for (const row of rows) {
    if (x_a <= row.ratio) {
      if (below === undefined) return { e_a: row.e, Y: row.Y };
      const share = (x_a - below.ratio) / (row.ratio - below.ratio);
      return { e_a: below.e + share * (row.e - below.e), Y: below.Y + share * (row.Y - below.Y) };
    }
    below = row;
  }
  return undefined;
}
