// A document assessed on the server, with everything that is kept beside the result.
import { assess } from '@/lib/assess/assess';
import type { Assessment } from '@/lib/assess/assessment';
import { hashOf } from '@/lib/design/canonical';
import type { Design } from '@/lib/design/document';
import { factsOf, type ReviewFacts } from '@/lib/review/facts';
import type { HeadlineView } from '../views/common';

export interface Assessed {
  readonly result: Assessment;
  readonly hash: string;
  readonly headline: HeadlineView;
  readonly facts: ReviewFacts;
}

/** Assesses with the worked sheet. */
export function assessed(document: Design): Assessed {
  const result = assess(document, { sheet: true });
  return { result, hash: hashOf(result), headline: headlineOf(result), facts: factsOf(document, result) };
}

export function headlineOf(assessment: Assessment): HeadlineView {
  const { headline, checks, findings } = assessment;
  const count = (c: string) => findings.filter((f) => f.class === c).length;
  return {
    weakest: checks.find((c) => c.key === headline.weakest)?.label ?? null,
    weakestKey: headline.weakest,
    holdsTo: headline.holdsTo,
    demanded: headline.demanded,
    forced: headline.forced,
    factor: headline.factor,
    required: headline.required,
    notAssessed: headline.notAssessed,
    findings: { critical: count('critical'), major: count('major'), minor: count('minor') },
  };
}
