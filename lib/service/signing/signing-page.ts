// The page where a hold point is signed: everything that the signature will bind.
import { meaningOf, meaningVersion } from '@/lib/review/meaning';
import { requirementSentences, requirementsVersion } from '@/lib/review/requirements';
import type { Contract } from '../contract';
import { designHead } from '../designs/head';
import * as inputs from '../inputs/review';
import { done } from '../result';
import { readSheet } from '../sheets/reading';
import { designCase } from '../use-case';
import { holdPointView } from './views';

export const signingPage: Contract['signingPage'] = designCase(
  'design.read',
  inputs.signingPage,
  async (context, input) => {
    const reading = await readSheet(context, input.letter);
    if (!reading.ok) return reading;
    const { judged, people, revision, assessment, shown, findings, threads } = reading.value;
    return done({
      design: designHead(context),
      revision,
      holdPoint: holdPointView(input.holdPoint, judged, context, people),
      assessment,
      headline: judged.row.headline,
      findings: findings.toSorted((a, b) => Number(a.disposition !== null) - Number(b.disposition !== null)),
      threads,
      bound: {
        documentHash: revision.documentHash,
        assessmentHash: shown.hash,
        method: shown.method,
        meaningVersion,
        meaning: meaningOf(input.holdPoint),
        requirementsVersion,
        requirements: requirementSentences(input.holdPoint),
      },
    });
  },
);
