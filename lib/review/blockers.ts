// What stands between a revision and a hold point, in plain sentences, and who can take it out of the way.
import { type Decided, inForce } from './dispositions';
import { type CheckFact, keyOfCheck, type ReviewFacts } from './facts';
import { type HoldPoint, holdPoints } from './hold-points';
import { requirements } from './requirements';

export interface Blocker {
  readonly key: string;
  readonly sentence: string;
  readonly remover: string;
  /** Key or path it is about, `thread:<number>` for a thread, null for none. */
  readonly at: string | null;
  /** What a disposition must name to remove it; null when none can. */
  readonly dispose: { readonly findingKey: string; readonly fingerprint: string } | null;
  /** Whether it also takes back, for as long as it stands, a release that was already signed. */
  readonly suspends: boolean;
}

export interface UnderReview {
  readonly facts: ReviewFacts;
  readonly ordinal: number;
  readonly dispositions: readonly Decided[];
  /** Numbers of the open threads that weigh on this revision. */
  readonly openThreads: readonly number[];
  /** Whether the signatures of each hold point are complete. */
  readonly signed: Readonly<Record<HoldPoint, boolean>>;
  /** Letter of a later revision, or null. */
  readonly supersededBy: string | null;
}

/** Everything that stands against a hold point; the weightiest first. */
export function blockersOf(point: HoldPoint, review: UnderReview): Blocker[] {
  return [
    ...superseded(review),
    ...openFindings(point, review),
    ...holding(point, review),
    ...ladder(review),
    ...checks(point, review),
    ...openThreads(review),
    ...earlier(point, review),
  ];
}

function superseded({ supersededBy }: UnderReview): Blocker[] {
  if (supersededBy === null) return [];
  return [
    {
      key: 'superseded',
      sentence: `Revision ${supersededBy} has taken the place of this one.`,
      remover: `Nobody: sign revision ${supersededBy} instead.`,
      at: null,
      dispose: null,
      suspends: false,
    },
  ];
}

function openFindings(point: HoldPoint, { facts, ordinal, dispositions }: UnderReview): Blocker[] {
  const { findings } = requirements[point];
  return facts.findings
    .filter((f) => findings.includes(f.class) && inForce(f, ordinal, dispositions).holds === null)
    .sort((a, b) => Number(a.class !== 'critical') - Number(b.class !== 'critical'))
    .map((f) => ({
      key: `finding:${f.key}`,
      sentence: `A ${f.class} finding is open: ${f.text}`,
      remover:
        f.class === 'critical'
          ? 'The author by a new revision without it, or a safety officer who had no hand in the design by a disposition with a reason.'
          : 'The author by a new revision without it, or any member by a disposition with a reason.',
      at: f.key,
      dispose: { findingKey: f.key, fingerprint: f.fingerprint },
      suspends: true,
    }));
}

function holding(point: HoldPoint, { facts }: UnderReview): Blocker[] {
  if (!requirements[point].holdingRefused.includes(facts.held)) return [];
  return [
    {
      key: 'holding',
      sentence:
        facts.held === 'hand' ? 'It is held by hand only.' : 'Nothing holds the actuator on the bench.',
      remover: 'The author by a new revision that says how it is held.',
      at: 'rig.held',
      dispose: null,
      suspends: true,
    },
  ];
}

function ladder({ facts }: UnderReview): Blocker[] {
  if (facts.ladderAssessed) return [];
  return [
    {
      key: 'ladder',
      sentence: 'No element of the power path could be assessed, so nothing is known of where it gives way.',
      remover: 'The author by a new revision that fills in the missing data.',
      at: null,
      dispose: null,
      suspends: true,
    },
  ];
}

function checks(point: HoldPoint, { facts, ordinal, dispositions }: UnderReview): Blocker[] {
  const which = requirements[point].checks;
  if (which === 'none') return [];
  return facts.checks
    .filter((c) => which === 'all' || c.onLadder)
    .filter((c) => {
      const fact = { key: keyOfCheck(c.key), fingerprint: c.fingerprint };
      return !mayConcede(c) || inForce(fact, ordinal, dispositions).holds === null;
    })
    .map(checkBlocker);
}

/**
 * Whether a check that does not hold may be accepted with a reason at all. On the ladder a demand beyond the capacity
 * itself may not: that is no reserve given up but a break foreseen. Off the ladder (flank life, wear, heat) a demand
 * beyond the capacity shortens the life and is for the safety officer to weigh; what was not assessed may be accepted
 * since the reason can be a measurement that the calculation does not know.
 */
export function mayConcede(check: CheckFact): boolean {
  if (check.status === 'not assessed' || !check.onLadder) return true;
  return check.factor !== null && check.factor >= 1;
}

function checkBlocker(c: CheckFact): Blocker {
  const concession = mayConcede(c);
  return {
    key: keyOfCheck(c.key),
    sentence:
      c.status === 'not assessed'
        ? `${c.label}: not assessed. ${c.missing ?? ''}`.trim()
        : `${c.label}: factor ${rounded(c.factor)} where ${rounded(c.required)} is required.`,
    remover: concession
      ? 'The author by a new revision, or a safety officer who had no hand in the design by accepting it with a reason.'
      : 'The author by a new revision: a demand beyond the capacity cannot be accepted.',
    at: c.key,
    dispose: concession ? { findingKey: keyOfCheck(c.key), fingerprint: c.fingerprint } : null,
    suspends: true,
  };
}

/** Down to two decimals, so that a factor just below the required one does not print as if it reached it. */
function rounded(factor: number | null): string {
  return factor === null ? 'unknown' : (Math.floor(factor * 100 + 1e-9) / 100).toString();
}

function openThreads({ openThreads: numbers }: UnderReview): Blocker[] {
  return numbers.map((number) => ({
    key: `thread:${number}`,
    sentence: `Thread ${number} is not resolved.`,
    remover: 'Who opened it, or a safety officer who had no hand in the design, by settling it.',
    at: `thread:${number}`,
    dispose: null,
    suspends: true,
  }));
}

function earlier(point: HoldPoint, { signed }: UnderReview): Blocker[] {
  return requirements[point].after
    .filter((before) => !signed[before])
    .map((before) => ({
      key: `earlier:${before}`,
      sentence: `${holdPoints[before].label} is not signed yet.`,
      remover: `Those who sign for ${holdPoints[before].label.toLowerCase()}.`,
      at: null,
      dispose: null,
      suspends: true,
    }));
}
