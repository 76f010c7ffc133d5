// The sheet of one revision.
import { may } from '@/lib/access/policy';
import { methodVersion } from '@/lib/assess/method';
import type { Contract } from '../contract';
import { designHead } from '../designs/head';
import { revisionMark, standingView } from '../designs/judged';
import * as inputs from '../inputs/designs';
import { done } from '../result';
import { holdPointViews } from '../signing/views';
import { designCase } from '../use-case';
import { changedSince } from './changed-since';
import { readSheet } from './reading';

export const revisionSheet: Contract['revisionSheet'] = designCase(
  'design.read',
  inputs.revisionSheet,
  async (context, input) => {
    const reading = await readSheet(context, input.letter, input.method);
    if (!reading.ok) return reading;
    const { all, judged, people, marks, shown, ...sheet } = reading.value;
    const letterAt = (ordinal: number) => all.find((j) => j.row.ordinal === ordinal)?.row.letter ?? null;
    const { role } = context;
    const before = all.find((j) => j.row.ordinal === judged.row.ordinal - 1);
    const changed = await changedSince(context, before, reading.value);
    return done({
      design: designHead(context),
      revision: sheet.revision,
      standing: standingView(judged),
      assessment: sheet.assessment,
      shown,
      otherAssessments: marks.filter((m) => m.method !== shown.method),
      presentMethod: methodVersion,
      findings: sheet.findings,
      threads: sheet.threads,
      holdPoints: holdPointViews(judged, context, people),
      revisions: all.map((j) => revisionMark(j, people)),
      changed,
      previous: before?.row.letter ?? null,
      next: letterAt(judged.row.ordinal + 1),
      supersededBy: judged.supersededBy,
      may: {
        write: may(role, 'thread.write'),
        reassess: may(role, 'revision.reassess') && !marks.some((m) => m.method === methodVersion),
        edit: may(role, 'draft.edit'),
      },
    });
  },
);
