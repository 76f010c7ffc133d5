// Following one number of a revision, or of the draft, back to what was entered.
import { may } from '@/lib/access/policy';
import { assess } from '@/lib/assess/assess';
import type { Assessment } from '@/lib/assess/assessment';
import { type CatalogRow, catalogRow } from '@/lib/assess/trace/rows';
import { type Root, rootsOf, subjectOf } from '@/lib/assess/trace/subject';
import { type Origin, type Trace, traceOf } from '@/lib/assess/trace/trace';
import { printField } from '@/lib/compare/fields';
import type { Design } from '@/lib/design/document';
import { fieldsOf } from '@/lib/design/walk';
import { reader } from '@/lib/store/database';
import { readDraft } from '@/lib/store/designs/drafts';
import type { Contract } from '../contract';
import * as inputs from '../inputs/designs';
import { done, type Result, refused } from '../result';
import { type DesignContext, designCase } from '../use-case';
import { readSheet } from './reading';

export const followNumber: Contract['followNumber'] = designCase(
  'design.read',
  inputs.followNumber,
  async (context, input) => {
    const read = await (input.side === 'draft' ? draftSide(context) : revisionSide(context, input));
    if (!read.ok) return read;
    const { document, assessment, hashes } = read.value;
    const subject = subjectOf(assessment, input.kind, input.key);
    if (subject === null) return refused('number.notFound');
    const trace = traceOf(assessment.sheet, rootsOf(subject));
    const { entered, rows } = endsOf(trace, document);
    return done({ design: input.design, side: input.side, document, hashes, subject, trace, entered, rows });
  },
);

interface Side {
  readonly document: Design;
  readonly assessment: Assessment;
  readonly hashes: readonly string[];
}

async function revisionSide(
  context: DesignContext,
  input: { readonly side: string; readonly method?: string | undefined },
): Promise<Result<Side>> {
  const reading = await readSheet(context, input.side, input.method);
  if (!reading.ok) return reading;
  const { revision, assessment, shown } = reading.value;
  return done({ document: revision.document, assessment, hashes: [revision.documentHash, shown.hash] });
}

/** A draft is worked anew, with its sheet: it has no assessment that is kept. */
async function draftSide({ design, role }: DesignContext): Promise<Result<Side>> {
  if (!may(role, 'draft.read')) return refused('viewer.role');
  const { content, documentHash } = await readDraft(reader(), design.designId);
  const assessment = assess(content.document, { sheet: true });
  return done({ document: content.document, assessment, hashes: [documentHash, assessment.method] });
}

/** What the trace ends at, in words: fields as they were entered, rows of the catalogue with their sources. */
function endsOf(trace: Trace<Root>, document: Design) {
  const fields = new Map(fieldsOf(document).map((at) => [at.path, at]));
  const entered = new Map<string, string>();
  const rows = new Map<string, CatalogRow>();
  const enter = (path: string) => {
    const at = fields.get(path);
    if (at !== undefined) entered.set(path, printField(at.value, at.field));
  };
  for (const origin of originsOf(trace)) {
    if (origin.kind === 'field') enter(origin.path);
    if (origin.kind !== 'catalog') continue;
    const row = catalogRow(origin.row);
    if (row === undefined) continue;
    rows.set(origin.row, row);
    if (row.by !== null) enter(row.by);
  }
  return { entered, rows };
}

function originsOf(trace: Trace<Root>): Origin[] {
  const slots = [...trace.roots, ...[...trace.steps.values()].flatMap((s) => s.inputs)];
  return slots.map((slot) => slot.origin);
}
