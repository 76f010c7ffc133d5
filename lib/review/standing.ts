// Where a revision stands in its review, worked out from what was decided and signed.
import type { HoldPoint } from './hold-points';

export const standingLabels = {
  inPreparation: 'In preparation',
  underReview: 'Under review',
  benchSpin: 'Released for bench spin',
  proofLoad: 'Released for proof load',
  fullPower: 'Released for full power',
  withdrawn: 'Release withdrawn',
} as const;

export type StandingKey = keyof typeof standingLabels;

/** What became of one hold point: every signature it needs stands, a needed one was withdrawn, or neither. */
export type HoldPointOutcome = 'released' | 'withdrawn' | 'unsigned';

/**
 * Standing of a revision. A withdrawn release is louder than any that stands: whoever sees the revision must see it.
 * @param outcomes null for a draft, which has no standing but “in preparation”.
 */
export function standingOf(outcomes: Readonly<Record<HoldPoint, HoldPointOutcome>> | null): StandingKey {
  if (outcomes === null) return 'inPreparation';
  const all = [outcomes.benchSpin, outcomes.proofLoad, outcomes.fullPower];
  if (all.includes('withdrawn')) return 'withdrawn';
  if (outcomes.fullPower === 'released') return 'fullPower';
  if (outcomes.proofLoad === 'released') return 'proofLoad';
  if (outcomes.benchSpin === 'released') return 'benchSpin';
  return 'underReview';
}
