// Hold points as pages see them: state, what stands in the way, who signed, and whether the viewer may.
import { may, roleLabels } from '@/lib/access/policy';
import type { FindingClass } from '@/lib/assess/assessment';
import type { Blocker } from '@/lib/review/blockers';
import { type HoldPoint, holdPointKeys, holdPoints } from '@/lib/review/hold-points';
import { needsOf, type SignRefusal, signRefusal } from '@/lib/review/signatures';
import type { SignOffRow } from '@/lib/store/review/record';
import type { JudgedRevision } from '../designs/judged';
import type { FailureCode } from '../failures';
import { disposeRefusal, hadHand, refusalSentence } from '../findings/weight';
import type { People } from '../people';
import type { DesignContext } from '../use-case';
import type { BlockerView, HoldPointView, SignatureView } from '../views/signing';

export const refusalCodes: Readonly<Record<SignRefusal, FailureCode>> = {
  author: 'signoff.author',
  role: 'signoff.role',
  twice: 'signoff.twice',
  complete: 'signoff.complete',
};

export function holdPointViews(
  judged: JudgedRevision,
  context: DesignContext,
  people: People,
): HoldPointView[] {
  return holdPointKeys.map((point) => holdPointView(point, judged, context, people));
}

export function holdPointView(
  point: HoldPoint,
  judged: JudgedRevision,
  context: DesignContext,
  people: People,
): HoldPointView {
  const { judgement, signOffs } = judged;
  const given = givenOf(signOffs);
  const blockers = judgement.blockers[point];
  const whyNot = whyNotSign(point, judged, context);
  return {
    key: point,
    ...holdPoints[point],
    state: judgement.states[point],
    blockers: blockers.map((b) => blockerView(b, judged, context)),
    needed: needsOf(point, given).map((n) => ({ who: n.need.who, met: n.met })),
    signatures: signOffs
      .filter((s) => s.holdPoint === point)
      .map((s) => signatureView(s, judged, context, people)),
    maySign: whyNot === null,
    whyNot,
  };
}

/** The signatures as the rules of review look at them. */
export function givenOf(signOffs: readonly SignOffRow[]) {
  return signOffs.map((s) => ({ ...s, withdrawn: s.voidAt !== null }));
}

function whyNotSign(point: HoldPoint, judged: JudgedRevision, context: DesignContext): string | null {
  if (!may(context.role, 'signOff.sign')) return refusalSentence('signoff.role');
  const signer = { userId: context.viewer.userId, role: context.role, hadHand: hadHand(context, judged.row) };
  const refusal = signRefusal(point, signer, givenOf(judged.signOffs));
  if (refusal !== null) return refusalSentence(refusalCodes[refusal]);
  const count = judged.judgement.blockers[point].length;
  if (count === 0) return null;
  return count === 1 ? 'One thing still stands in the way.' : `${count} things still stand in the way.`;
}

export function blockerView(blocker: Blocker, judged: JudgedRevision, context: DesignContext): BlockerView {
  const { key, sentence, remover, at, dispose } = blocker;
  const mayDispose =
    dispose !== null && disposeRefusal(weightOf(dispose.findingKey, judged), context, judged.row) === null;
  return { key, sentence, remover, at, dispose, mayDispose };
}

/** Class of a finding by its key; what is no finding of the revision is one of its checks. */
function weightOf(findingKey: string, judged: JudgedRevision): FindingClass | 'check' {
  return judged.row.facts.findings.find((f) => f.key === findingKey)?.class ?? 'check';
}

function signatureView(
  s: SignOffRow,
  judged: JudgedRevision,
  context: DesignContext,
  people: People,
): SignatureView {
  const mine = s.signerId === context.viewer.userId;
  return {
    signOffId: s.id,
    holdPoint: s.holdPoint,
    signer: people(s.signerId),
    roleThen: s.roleThen,
    roleThenLabel: roleLabels[s.roleThen],
    at: s.at.toISOString(),
    meaning: s.meaning,
    meaningVersion: s.meaningVersion,
    requirementsVersion: s.requirementsVersion,
    method: s.method,
    documentHash: s.documentHash,
    assessmentHash: s.assessmentHash,
    withdrawn:
      s.voidById === null || s.voidAt === null
        ? null
        : { by: people(s.voidById), at: s.voidAt.toISOString(), reason: s.voidReason ?? '' },
    olderMethod: s.assessmentHash !== judged.row.assessmentHash,
    mayWithdraw:
      s.voidAt === null &&
      may(context.role, 'signOff.withdraw') &&
      (mine || context.role === 'safetyOfficer'),
  };
}
