// Inputs about designs, drafts and revisions.
import { z } from 'zod';
import { subjectKinds } from '@/lib/assess/trace/subject';
import { edit } from '@/lib/design/edit';
import { clubCode, designNumber, letter, line, prose } from './terms';

export const clubShelf = z.object({ club: clubCode });

export const newDesign = z.object({
  club: clubCode,
  /** Key of a starter (lib/design/starters/registry). */
  starter: z.string().max(40),
  title: line('Title', 80),
});

export const openDraft = z.object({ design: designNumber });

export const saveDraft = z.object({
  design: designNumber,
  baseVersion: z.int().min(1),
  edits: z.array(edit).min(1).max(200),
});

export const replaceDraftFromRevision = z.object({
  design: designNumber,
  baseVersion: z.int().min(1),
  letter,
});

export const publish = z.object({
  design: designNumber,
  baseVersion: z.int().min(1),
  changeNote: prose('Change note', 3, 2000),
});

export const revisionSheet = z.object({
  design: designNumber,
  /** Left out: the latest revision. */
  letter: letter.optional(),
  /** Method of the assessment to show; left out: the newest. */
  method: z.string().max(40).optional(),
});

export const compareRevisions = z.object({
  design: designNumber,
  before: letter,
  /** A letter, or `draft`. */
  after: z.union([letter, z.literal('draft')]),
});

export const followNumber = z.object({
  design: designNumber,
  /** A letter, or `draft`. */
  side: z.union([letter, z.literal('draft')]),
  kind: z.enum(subjectKinds),
  /** Key of the check, figure or curve. */
  key: z.string().min(1).max(300),
  /** Method of the assessment; left out: the newest. */
  method: z.string().max(40).optional(),
});

export const reviseAssessment = z.object({ design: designNumber, letter });

export const gainMap = z.object({ design: designNumber, letter });
