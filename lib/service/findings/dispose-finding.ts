// Deciding about a finding, or about a check that stands in the way of a hold point.
import type { FindingClass } from '@/lib/assess/assessment';
import { mayConcede } from '@/lib/review/blockers';
import { keyOfCheck, type ReviewFacts } from '@/lib/review/facts';
import { lockDesign } from '@/lib/store/designs/access';
import { appendEvent } from '@/lib/store/ledger';
import { addDisposition } from '@/lib/store/review/decisions';
import { readRecord } from '@/lib/store/review/record';
import { change } from '../change';
import type { Contract } from '../contract';
import * as inputs from '../inputs/review';
import { done, refused } from '../result';
import { designCase } from '../use-case';
import { disposeRefusal } from './weight';

export const disposeFinding: Contract['disposeFinding'] = designCase(
  'finding.dispose',
  inputs.disposeFinding,
  async (context, input) =>
    change(async (tx) => {
      const { viewer, design, role } = context;
      await lockDesign(tx, design.designId);
      const record = await readRecord(tx, [design.designId], 'all');
      const revision = record.revisions.find((r) => r.letter === input.letter);
      if (revision === undefined) return refused('revision.notFound');
      const fact = decidable(revision.facts, input.findingKey);
      if (fact === null) return refused('finding.notFound');
      if (fact.fingerprint !== input.fingerprint) return refused('finding.changed');
      const refusal = disposeRefusal(fact.weight, context, revision);
      if (refusal !== null) return refused(refusal);
      const { findingKey, fingerprint, kind, reason } = input;
      const disposition = await addDisposition(tx, {
        designId: design.designId,
        revisionId: revision.revisionId,
        findingKey,
        fingerprint,
        kind,
        reason,
        byId: viewer.userId,
        roleThen: role,
        at: new Date(),
      });
      await appendEvent(tx, {
        clubId: design.clubId,
        actorId: viewer.userId,
        kind: 'finding.disposed',
        subject: `${design.number} ${input.letter}`,
        data: { finding: findingKey, fingerprint, disposition: kind, reason, role },
      });
      return done({ dispositionId: disposition.id });
    }),
);

interface Decidable {
  readonly weight: FindingClass | 'check';
  readonly fingerprint: string;
}

function decidable(facts: ReviewFacts, key: string): Decidable | null {
  const finding = facts.findings.find((f) => f.key === key);
  if (finding !== undefined) return { weight: finding.class, fingerprint: finding.fingerprint };
  const check = facts.checks.find((c) => keyOfCheck(c.key) === key);
  return check !== undefined && mayConcede(check)
    ? { weight: 'check', fingerprint: check.fingerprint }
    : null;
}
