// Hold points, what blocks them, who signed, and everything that a signature binds.
import type { Role } from '@/lib/access/policy';
import type { Assessment } from '@/lib/assess/assessment';
import type { HoldPoint } from '@/lib/review/hold-points';
import type { HoldPointState } from '@/lib/review/standing';
import type { FindingView } from './finding';
import type { DesignHead, HeadlineView, PersonView } from './heads';
import type { RevisionView } from './revision';
import type { ThreadView } from './thread';

export interface BlockerView {
  readonly key: string;
  /** What stands in the way, in a plain sentence. */
  readonly sentence: string;
  /** Who can take it out of the way and how, in a plain sentence. */
  readonly remover: string;
  /** Key or path of the check, finding or thread (`thread:<number>`) it is about; null for none. */
  readonly at: string | null;
  /** Send to `disposeFinding` to accept it with a reason; null when no disposition can remove it. */
  readonly dispose: { readonly findingKey: string; readonly fingerprint: string } | null;
  /** Whether the viewer may dispose of it. */
  readonly mayDispose: boolean;
}

export interface SignatureView {
  readonly signOffId: string;
  readonly holdPoint: HoldPoint;
  readonly signer: PersonView;
  readonly roleThen: Role;
  readonly roleThenLabel: string;
  readonly at: string;
  readonly meaning: string;
  readonly meaningVersion: number;
  readonly requirementsVersion: number;
  readonly method: string;
  readonly documentHash: string;
  readonly assessmentHash: string;
  readonly withdrawn: { readonly by: PersonView; readonly at: string; readonly reason: string } | null;
  /** It was given on an assessment older than the newest of the revision. */
  readonly olderMethod: boolean;
  readonly mayWithdraw: boolean;
}

export interface NeededView {
  /** e.g. `A safety officer who had no hand in the design`. */
  readonly who: string;
  readonly met: boolean;
}

export interface HoldPointView {
  readonly key: HoldPoint;
  readonly label: string;
  readonly releases: string;
  /**
   * released: all signatures stand · suspended: signed, but a blocker has come up since · withdrawn: a signature was
   * taken back · open: may be signed · blocked: may not be signed yet.
   */
  readonly state: HoldPointState;
  readonly blockers: readonly BlockerView[];
  readonly needed: readonly NeededView[];
  readonly signatures: readonly SignatureView[];
  readonly maySign: boolean;
  /** Why the viewer cannot sign now, in a sentence; null when they can. */
  readonly whyNot: string | null;
}

export interface SigningView {
  readonly design: DesignHead;
  readonly revision: RevisionView;
  readonly holdPoint: HoldPointView;
  readonly assessment: Assessment;
  readonly headline: HeadlineView;
  /** All findings, open ones first, with their dispositions. */
  readonly findings: readonly FindingView[];
  readonly threads: readonly ThreadView[];
  /** What is bound: send these back with the password. */
  readonly bound: {
    readonly documentHash: string;
    readonly assessmentHash: string;
    readonly method: string;
    readonly meaningVersion: number;
    readonly meaning: string;
    readonly requirementsVersion: number;
    /** What this hold point requires, one sentence each. */
    readonly requirements: readonly string[];
  };
}

export interface Signed {
  readonly signOffId: string;
  readonly at: string;
  /** Whether the hold point is released now. */
  readonly released: boolean;
}
