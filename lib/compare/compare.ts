// Two assessed documents → what changed, in fields and in consequences.
import type { Assessment } from '@/lib/assess/assessment';
import type { Design } from '@/lib/design/document';
import { changedChecks } from './checks';
import type { Comparison } from './comparison';
import { changedFields } from './fields';
import { changedFigures } from './figures';
import { changedFindings } from './findings';

/** A document and the assessment that was made of it. */
export interface Assessed {
  readonly document: Design;
  readonly assessment: Assessment;
}

/**
 * Sets `after` beside `before`. Everything is aligned by stable keys, so that a stage put in the middle leaves the
 * others lined up. Comparing a thing with itself gives empty lists; swapping the two sides swaps raised and cleared,
 * changes the sign of every change and turns every verdict round.
 */
export function compare(before: Assessed, after: Assessed): Comparison {
  return {
    methodBefore: before.assessment.method,
    methodAfter: after.assessment.method,
    ...changedFields(before.document, after.document),
    figures: changedFigures(before.assessment.figures, after.assessment.figures),
    checks: changedChecks(before.assessment, after.assessment),
    ...changedFindings(before.assessment.findings, after.assessment.findings),
    headlineBefore: headlineOf(before.assessment),
    headlineAfter: headlineOf(after.assessment),
  };
}

function headlineOf({ headline, checks }: Assessment): Comparison['headlineBefore'] {
  return { ...headline, label: checks.find((c) => c.key === headline.weakest)?.label ?? null };
}
