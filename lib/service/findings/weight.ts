// How heavily a finding or check weighs, and whether the viewer may decide about it.
import { may } from '@/lib/access/policy';
import type { FindingClass } from '@/lib/assess/assessment';
import { mayDispose } from '@/lib/review/dispositions';
import type { RevisionRow } from '@/lib/store/review/record';
import type { FailureCode } from '../failures';
import { failures } from '../failures';
import type { DesignContext } from '../use-case';

/** Whether the viewer wrote any part of the design up to this revision. */
export function hadHand(context: DesignContext, revision: Pick<RevisionRow, 'authorId' | 'hands'>): boolean {
  const me = context.viewer.userId;
  return context.design.authorId === me || revision.authorId === me || revision.hands.includes(me);
}

/** Why the viewer may not decide about something of this weight, or null when they may. */
export function disposeRefusal(
  weight: FindingClass | 'check',
  context: DesignContext,
  revision: Pick<RevisionRow, 'authorId' | 'hands'>,
): FailureCode | null {
  if (!may(context.role, 'finding.dispose')) return 'viewer.role';
  const answer = mayDispose(weight, context.role, hadHand(context, revision));
  if (answer === 'hand') return 'finding.author';
  return answer === 'officer' ? 'finding.officer' : null;
}

export function refusalSentence(code: FailureCode): string {
  return failures[code].sentence;
}
