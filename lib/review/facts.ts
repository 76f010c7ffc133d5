// What review needs of an assessed revision: which checks and findings there are and what they state. Plain JSON.
import { z } from 'zod';
import type { Assessment, Check } from '@/lib/assess/assessment';
import { hashOf } from '@/lib/design/canonical';
import type { Design } from '@/lib/design/document';
import { fingerprintOf } from './dispositions';

export const reviewFacts = z.object({
  /** How the actuator is held on the bench (lib/design/parts/rig). */
  held: z.string(),
  /** Whether any element on the ladder could be assessed. */
  ladderAssessed: z.boolean(),
  checks: z.array(
    z.object({
      key: z.string(),
      label: z.string(),
      status: z.enum(['holds', 'below', 'not assessed']),
      onLadder: z.boolean(),
      factor: z.number().nullable(),
      required: z.number(),
      missing: z.string().nullable(),
      fingerprint: z.string(),
    }),
  ),
  findings: z.array(
    z.object({
      key: z.string(),
      class: z.enum(['critical', 'major', 'minor']),
      text: z.string(),
      fingerprint: z.string(),
    }),
  ),
});

export type ReviewFacts = z.infer<typeof reviewFacts>;
export type CheckFact = ReviewFacts['checks'][number];
export type FindingFact = ReviewFacts['findings'][number];

/** The facts of a document and its assessment. Checks that hold are left out: nothing is ever decided about them. */
export function factsOf(document: Design, assessment: Assessment): ReviewFacts {
  return {
    held: document.rig.held,
    ladderAssessed: assessment.headline.weakest !== null,
    checks: assessment.checks
      .filter((c) => c.status !== 'holds')
      .map((c) => ({
        key: c.key,
        label: c.label,
        status: c.status,
        onLadder: c.onLadder,
        factor: c.factor,
        required: c.required,
        missing: c.missing,
        fingerprint: fingerprintOfCheck(c),
      })),
    findings: assessment.findings.map((f) => ({
      key: f.key,
      class: f.class,
      text: f.text,
      fingerprint: fingerprintOf(f),
    })),
  };
}

/** Key under which a disposition of a check is kept, beside those of findings (`<rule>:<path>`). */
export function keyOfCheck(checkKey: string): string {
  return `check:${checkKey}`;
}

/** Hash of what a check states; numbers to six figures, so that rounding in the last bit changes nothing. */
export function fingerprintOfCheck(check: Check): string {
  return hashOf({
    label: check.label,
    status: check.status,
    factor: check.factor === null ? null : Number(check.factor.toPrecision(6)),
    required: check.required,
    missing: check.missing,
  });
}
