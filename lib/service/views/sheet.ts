// One revision with its assessment, findings, threads and hold points: the sheet under review.
import type { Assessment } from '@/lib/assess/assessment';
import type { ChangedView } from './changed';
import type { FindingView } from './finding';
import type { DesignHead, RevisionMark, StandingView } from './heads';
import type { RevisionView } from './revision';
import type { HoldPointView } from './signing';
import type { ThreadView } from './thread';

export interface AssessmentMark {
  readonly method: string;
  readonly madeAt: string;
  readonly hash: string;
}

export interface SheetView {
  readonly design: DesignHead;
  readonly revision: RevisionView;
  readonly standing: StandingView;
  /** The assessment shown: the newest of this revision unless another method was asked for. */
  readonly assessment: Assessment;
  readonly shown: AssessmentMark;
  readonly otherAssessments: readonly AssessmentMark[];
  /** The method of this service; when it differs from `shown.method` the revision can be assessed anew. */
  readonly presentMethod: string;
  /** In the order critical, major, minor. */
  readonly findings: readonly FindingView[];
  /** Open ones first, then by number. */
  readonly threads: readonly ThreadView[];
  readonly holdPoints: readonly HoldPointView[];
  /** All revisions of the design, newest first. */
  readonly revisions: readonly RevisionMark[];
  /** What it changed since the revision before; null for the first. */
  readonly changed: ChangedView | null;
  readonly previous: string | null;
  readonly next: string | null;
  readonly supersededBy: string | null;
  readonly may: { readonly write: boolean; readonly reassess: boolean; readonly edit: boolean };
}
