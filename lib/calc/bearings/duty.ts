// A bearing over a duty: steady load that wears it as much, steady speed that turns it as far.
import { formula } from '../formula';

/**
 * Steady load that uses up as much life as two loads one after the other, N: P_1 for N_1 revolutions, P_2 for N_2.
 * Folding it over a list gives the mean of the list (`meanLoad`).
 */
export const meanOfTwoLoads = formula({
  key: 'bearings.meanOfTwoLoads',
  symbol: 'P_m',
  name: 'Mean load of two loads',
  unit: 'N',
  given: { P_1: 'N', N_1: '1', P_2: 'N', N_2: '1' },
  text: 'cbrt((P_1^3 * N_1 + P_2^3 * N_2) / (N_1 + N_2))',
  source: 'Linear damage sum with the exponent 3 of ISO 281; bearing makers’ catalogues (from memory)',
  validity: 'Ball bearings.',
  of: (g) => Math.cbrt((g.P_1 ** 3 * g.N_1 + g.P_2 ** 3 * g.N_2) / (g.N_1 + g.N_2)),
});

/** Share of the moves under the loads counted so far. */
export const shareSum = formula({
  key: 'bearings.shareSum',
  symbol: 'q',
  name: 'Share of the moves so far',
  unit: '1',
  given: { q_before: '1', q: '1' },
  text: 'q_before + q',
  source: 'Sum over the load spectrum',
  of: (g) => g.q_before + g.q,
});

/** Part of a duty: an equivalent load (N) and the revolutions (or any share of them) under it. */
export interface LoadPart {
  readonly P: number;
  readonly turns: number;
}

/** Steady load (N) that uses up as much life as the parts together; `undefined` when nothing turns. */
export function meanLoad(parts: readonly LoadPart[]): number | undefined {
  let turns = 0;
  let mean = 0;
  for (const part of parts) {
    if (part.turns <= 0) continue;
    mean = turns === 0 ? part.P : meanOfTwoLoads.of({ P_1: mean, N_1: turns, P_2: part.P, N_2: part.turns });
    turns += part.turns;
  }
  return turns > 0 ? mean : undefined;
}

/** Steady speed with the revolutions of a swing, rad/s: phi_h from the middle to the end, f_osc swings (to and fro) a second. */
export const oscillationSpeed = formula({
  key: 'bearings.oscillationSpeed',
  symbol: 'omega_eq',
  name: 'Equivalent speed of a swinging bearing',
  unit: 'rad/s',
  given: { phi_h: 'rad', f_osc: '1/s' },
  text: '4 * phi_h * f_osc',
  source: 'Bearing makers’ catalogues (from memory); path of a swing',
  validity:
    'Swings that carry each ball onto its neighbour’s path; smaller ones wear dents into the races instead.',
  of: (g) => 4 * g.phi_h * g.f_osc,
});
