// A document assessed on the server, with everything that is kept beside the result.
import { createHash } from 'node:crypto';
import { assess } from '@/lib/assess/assess';
import type { Assessment } from '@/lib/assess/assessment';
import { canonical } from '@/lib/design/canonical';
import type { Design } from '@/lib/design/document';
import { factsOf, type ReviewFacts } from '@/lib/review/facts';
import type { HeadlineView } from '../views/heads';

export interface Assessed {
  readonly result: Assessment;
  readonly hash: string;
  readonly headline: HeadlineView;
  readonly facts: ReviewFacts;
}

/** Assesses with the worked sheet. */
export function assessed(document: Design): Assessed {
  const result = assess(document, { sheet: true });
  // Node's own SHA-256: a result with its sheet is long, and the one that browsers share would take as long as all else.
  const hash = createHash('sha256').update(canonical(result)).digest('hex');
  return { result, hash, headline: headlineOf(result), facts: factsOf(document, result) };
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
