// Findings of an assessment as pages see them, with what was decided about each.
import type { Assessment, Finding } from '@/lib/assess/assessment';
import { dispositionLabels, fingerprintOf, inForce } from '@/lib/review/dispositions';
import type { DispositionRow } from '@/lib/store/review/record';
import type { JudgedRevision } from '../designs/judged';
import type { People } from '../people';
import type { DesignContext } from '../use-case';
import type { DispositionView, FindingView } from '../views/finding';
import { disposeRefusal, refusalSentence } from './weight';

const order = { critical: 0, major: 1, minor: 2 } as const;

/** In the order critical, major, minor; within a class as the assessment has them. */
export function findingViews(
  assessment: Assessment,
  judged: JudgedRevision,
  context: DesignContext,
  people: People,
): FindingView[] {
  return assessment.findings
    .toSorted((a, b) => order[a.class] - order[b.class])
    .map((finding) => findingView(finding, judged, context, people));
}

function findingView(
  finding: Finding,
  { row, dispositions }: JudgedRevision,
  context: DesignContext,
  people: People,
): FindingView {
  const fingerprint = fingerprintOf(finding);
  const { holds, lapsed } = inForce({ key: finding.key, fingerprint }, row.ordinal, dispositions);
  const refusal = disposeRefusal(finding.class, context, row);
  return {
    finding,
    fingerprint,
    disposition: holds === null ? null : dispositionView(holds, people),
    lapsed: lapsed === null ? null : dispositionView(lapsed, people),
    mayDispose: refusal === null,
    whyNot: refusal === null ? null : refusalSentence(refusal),
  };
}

export function dispositionView(d: DispositionRow, people: People): DispositionView {
  return {
    kind: d.kind,
    label: dispositionLabels[d.kind],
    reason: d.reason,
    by: people(d.byId),
    at: d.at.toISOString(),
    madeOn: d.letter,
  };
}
