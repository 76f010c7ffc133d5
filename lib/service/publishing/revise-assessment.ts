// Assessing a published revision anew by the present method, beside the assessment it had.
import { methodVersion } from '@/lib/assess/method';
import { reader } from '@/lib/store/database';
import { lockDesign } from '@/lib/store/designs/access';
import { createAssessment, readAssessment, readRevision } from '@/lib/store/designs/revisions';
import { appendEvent } from '@/lib/store/ledger';
import { change } from '../change';
import type { Contract } from '../contract';
import * as inputs from '../inputs/designs';
import { done, refused } from '../result';
import { designCase } from '../use-case';
import { assessed } from './assessed';

export const reviseAssessment: Contract['reviseAssessment'] = designCase(
  'revision.reassess',
  inputs.reviseAssessment,
  async ({ viewer, design }, input) => {
    const revision = await readRevision(reader(), design.designId, input.letter);
    if (revision === null) return refused('revision.notFound');
    const assessment = assessed(revision.document);
    return change(async (tx) => {
      await lockDesign(tx, design.designId);
      if ((await readAssessment(tx, revision.id, methodVersion)) !== null)
        return refused('assessment.current');
      await createAssessment(tx, { revisionId: revision.id, madeAt: new Date(), ...assessment });
      await appendEvent(tx, {
        clubId: design.clubId,
        actorId: viewer.userId,
        kind: 'revision.assessed',
        subject: `${design.number} ${input.letter}`,
        data: {
          letter: input.letter,
          documentHash: revision.documentHash,
          assessmentHash: assessment.hash,
          method: assessment.result.method,
        },
      });
      return done({ method: assessment.result.method });
    });
  },
);
