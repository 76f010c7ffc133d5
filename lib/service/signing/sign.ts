// Signing a hold point. Nothing that was true when the page was shown is trusted: person, role, password, content and
// blockers are looked at again, from locked rows, in the transaction that writes the signature.
import { passwordFits } from '@/lib/access/passwords';
import { may } from '@/lib/access/policy';
import { hashOf } from '@/lib/design/canonical';
import type { HoldPoint } from '@/lib/review/hold-points';
import { meaningOf, meaningVersion } from '@/lib/review/meaning';
import { requirementsVersion } from '@/lib/review/requirements';
import { complete, signRefusal } from '@/lib/review/signatures';
import { statementHash } from '@/lib/review/statement';
import { type Database, reader } from '@/lib/store/database';
import { lockDesign } from '@/lib/store/designs/access';
import {
  type KeptAssessment,
  type KeptRevision,
  readAssessment,
  readRevision,
} from '@/lib/store/designs/revisions';
import { appendEvent } from '@/lib/store/ledger';
import { lockedRole } from '@/lib/store/people/members';
import { accountById } from '@/lib/store/people/users';
import { addSignOff } from '@/lib/store/review/decisions';
import { readRecord } from '@/lib/store/review/record';
import { change } from '../change';
import type { Contract } from '../contract';
import { type JudgedRevision, judgeRecord } from '../designs/judged';
import { hadHand } from '../findings/weight';
import * as inputs from '../inputs/review';
import { done, type Result, refused } from '../result';
import { slowed } from '../sign-in/slowed';
import { type DesignContext, designCase } from '../use-case';
import { blockerView, givenOf, refusalCodes } from './views';

interface Seen {
  readonly letter: string;
  readonly holdPoint: HoldPoint;
  readonly seenDocumentHash: string;
  readonly seenAssessmentHash: string;
  readonly meaningVersion: number;
}

export const sign: Contract['sign'] = designCase('signOff.sign', inputs.sign, async (context, input) => {
  // Outside the transaction, since it takes a while on purpose and needs none of its locks.
  const password = await checkPassword(context.viewer.userId, input.password);
  if (!password.ok) return password;
  return change((tx) => signLocked(tx, context, input));
});

function checkPassword(userId: string, password: string): Promise<Result<null>> {
  return slowed([{ pace: 'signing', parts: [userId] }], async () => {
    const account = await accountById(reader(), userId);
    const fits = await passwordFits(password, account?.passwordHash ?? null);
    return fits
      ? done(null)
      : refused('signoff.password', { fields: { password: 'This is not your password.' } });
  });
}

async function signLocked(tx: Database, asked: DesignContext, input: Seen) {
  const { viewer, design } = asked;
  await lockDesign(tx, design.designId);
  const role = await lockedRole(tx, design.clubId, viewer.userId);
  if (role === null) return refused('design.notFound');
  if (!may(role, 'signOff.sign')) return refused('signoff.role');
  const context = { ...asked, role };
  const revision = await readRevision(tx, design.designId, input.letter);
  const assessment = revision === null ? null : await readAssessment(tx, revision.id);
  if (revision === null || assessment === null) return refused('revision.notFound');
  const judged = judgeRecord(await readRecord(tx, [design.designId], 'all')).find(
    (j) => j.row.revisionId === revision.id,
  );
  if (judged === undefined) return refused('revision.notFound');
  const against = objection(context, input, revision, assessment, judged);
  return against ?? keep(tx, context, input, revision, assessment, judged);
}

/** Why this signature cannot be given, or null when nothing speaks against it. */
function objection(
  context: DesignContext,
  input: Seen,
  revision: KeptRevision,
  assessment: KeptAssessment,
  judged: JudgedRevision,
): Result<never> | null {
  const signer = { userId: context.viewer.userId, role: context.role, hadHand: hadHand(context, revision) };
  const refusal = signRefusal(input.holdPoint, signer, givenOf(judged.signOffs));
  if (refusal !== null) return refused(refusalCodes[refusal]);
  // What was seen must be what is stored, and what is stored must be what its hash says.
  const seen =
    input.seenDocumentHash === revision.documentHash &&
    input.seenAssessmentHash === assessment.hash &&
    input.meaningVersion === meaningVersion;
  const whole =
    hashOf(revision.stored) === revision.documentHash && hashOf(assessment.stored) === assessment.hash;
  if (!seen || !whole) return refused('signoff.changed');
  const blockers = judged.judgement.blockers[input.holdPoint];
  if (blockers.length > 0)
    return refused('signoff.blocked', { detail: blockers.map((b) => blockerView(b, judged, context)) });
  return null;
}

async function keep(
  tx: Database,
  { viewer, design, role }: DesignContext,
  { holdPoint }: Seen,
  revision: KeptRevision,
  assessment: KeptAssessment,
  judged: JudgedRevision,
) {
  const at = new Date();
  const meaning = meaningOf(holdPoint);
  const bound = {
    holdPoint,
    documentHash: revision.documentHash,
    assessmentHash: assessment.hash,
    method: assessment.method,
    meaning,
    meaningVersion,
    requirementsVersion,
    signerId: viewer.userId,
    roleThen: role,
  };
  const statement = statementHash({
    ...bound,
    design: design.number,
    letter: revision.letter,
    signerName: viewer.name,
    at: at.toISOString(),
    authentication: 'password asked for at this signature',
  });
  const mine = judged.signOffs.filter((s) => s.holdPoint === holdPoint && s.signerId === viewer.userId);
  const signOff = await addSignOff(tx, {
    ...bound,
    revisionId: revision.id,
    assessmentId: assessment.id,
    round: mine.length + 1,
    statementHash: statement,
    at,
  });
  await appendEvent(tx, {
    clubId: design.clubId,
    actorId: viewer.userId,
    kind: 'signOff.signed',
    subject: `${design.number} ${revision.letter}`,
    data: {
      signOff: signOff.id,
      holdPoint,
      role,
      signedAt: at.toISOString(),
      statementHash: statement,
      documentHash: revision.documentHash,
      assessmentHash: assessment.hash,
      method: assessment.method,
      meaningVersion,
      requirementsVersion,
    },
  });
  const given = { holdPoint, signerId: viewer.userId, roleThen: role, withdrawn: false };
  return done({
    signOffId: signOff.id,
    at: at.toISOString(),
    released: complete(holdPoint, [...givenOf(judged.signOffs), given]),
  });
}
