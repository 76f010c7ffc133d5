// What a rule is: one reason to stop and look, with its source, judged on a worked assessment.
import type { Design } from '@/lib/design/document';
import type { DesignSI } from '@/lib/design/read';
import type { Check, Curve, Figure, FindingClass } from '../assessment';
import type { DriveWork, TrainWork } from '../work';

/** What a rule may look at: the document and everything the sections have worked out from it. */
export interface Judged {
  readonly document: Design;
  /** The same in SI, each number traced to its field. */
  readonly design: DesignSI;
  readonly figures: ReadonlyMap<string, Figure>;
  readonly checks: ReadonlyMap<string, Check>;
  readonly curves: readonly Curve[];
  readonly train: TrainWork;
  readonly drive: DriveWork;
  /** The check on the ladder with the least `holdsTo`, or null when none could be assessed. */
  readonly weakest: Check | null;
}

/** One place where a rule fires. */
export interface RawFinding {
  /** Path of the field, part, check or figure that it speaks of, through ids. One finding of a rule a path. */
  readonly at: string;
  /** Where it departs from the rule's own class, e.g. worse beyond a second limit. */
  readonly class?: FindingClass;
  /** What is the case, with the numbers, in one or two sentences. */
  readonly text: string;
  /** What to do about it, in one sentence. */
  readonly advice: string;
}

export interface Rule {
  /** Stable, in small letters and hyphens, e.g. `contact-ratio`. Findings carry it. */
  readonly key: string;
  readonly label: string;
  /** The class of its findings unless a finding says otherwise. */
  readonly class: FindingClass;
  /** Why it matters, in one or two sentences. */
  readonly reason: string;
  /** Document and clause, or *common practice, no source*. */
  readonly source: string;
  /** Every place where it fires; empty when all is well or when nothing can be said. Never throws. */
  judge(judged: Judged): readonly RawFinding[];
}

/** A figure's value by key, in SI; null when it is missing or was never worked out. */
export function figureOf(judged: Judged, key: string): number | null {
  return judged.figures.get(key)?.value ?? null;
}
