// Where a revision stands in its review, worked out from what was decided and signed.
import { type Blocker, blockersOf, type UnderReview } from './blockers';
import { type HoldPoint, holdPointKeys } from './hold-points';
import { complete, type Given } from './signatures';

export const standingLabels = {
  inPreparation: 'In preparation',
  underReview: 'Under review',
  benchSpin: 'Released for bench spin',
  proofLoad: 'Released for proof load',
  fullPower: 'Released for full power',
  suspended: 'Release suspended',
  withdrawn: 'Release withdrawn',
} as const;

export type StandingKey = keyof typeof standingLabels;

/**
 * What became of one hold point. `released`: every signature stands and nothing stands against it · `suspended`: signed,
 * but something stands against it now · `withdrawn`: a needed signature was taken back · `open`: may be signed ·
 * `blocked`: may not be signed yet.
 */
export type HoldPointState = 'released' | 'suspended' | 'withdrawn' | 'open' | 'blocked';

export interface Judgement {
  readonly states: Readonly<Record<HoldPoint, HoldPointState>>;
  readonly blockers: Readonly<Record<HoldPoint, readonly Blocker[]>>;
  readonly standing: StandingKey;
}

/** Judges a revision: the state of each hold point, what stands against it, and where the revision stands. */
export function judge(review: Omit<UnderReview, 'signed'>, given: readonly Given[]): Judgement {
  const signed = byPoint((point) => complete(point, given));
  const blockers = byPoint((point) => blockersOf(point, { ...review, signed }));
  const states = byPoint((point) => stateOf(point, signed[point], blockers[point], given));
  return { states, blockers, standing: standingOf(states) };
}

function stateOf(
  point: HoldPoint,
  signed: boolean,
  blockers: readonly Blocker[],
  given: readonly Given[],
): HoldPointState {
  if (signed) return blockers.some((b) => b.suspends) ? 'suspended' : 'released';
  if (given.some((g) => g.holdPoint === point && g.withdrawn)) return 'withdrawn';
  return blockers.length === 0 ? 'open' : 'blocked';
}

/**
 * Standing of a revision. A release that was withdrawn or is suspended is louder than any that stands: whoever sees the
 * revision must see it.
 * @param states null for a draft, which has no standing but “in preparation”.
 */
export function standingOf(states: Readonly<Record<HoldPoint, HoldPointState>> | null): StandingKey {
  if (states === null) return 'inPreparation';
  const all = holdPointKeys.map((point) => states[point]);
  if (all.includes('withdrawn')) return 'withdrawn';
  if (all.includes('suspended')) return 'suspended';
  if (states.fullPower === 'released') return 'fullPower';
  if (states.proofLoad === 'released') return 'proofLoad';
  if (states.benchSpin === 'released') return 'benchSpin';
  return 'underReview';
}

function byPoint<T>(of: (point: HoldPoint) => T): Record<HoldPoint, T> {
  return { benchSpin: of('benchSpin'), proofLoad: of('proofLoad'), fullPower: of('fullPower') };
}
