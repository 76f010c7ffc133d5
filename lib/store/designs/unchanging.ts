// Documents of revisions and results of assessments by id. Both are append-only, by trigger in the database, so what was
// once read under an id is true for good: a page that is opened often reads neither of these large rows again.
import type { Assessment } from '@/lib/assess/assessment';
import type { Design } from '@/lib/design/document';
import type { Database } from '../database';
import { Kept } from '../kept';
import { readDocument, readResult } from './revisions';

const documents = new Kept<Design>(100);
// Worked sheets make them large: some 300 kB each.
const results = new Kept<Assessment>(40);

/** The document of a revision that is known to exist. */
export async function documentOf(db: Database, revisionId: string): Promise<Design> {
  return documents.get(revisionId) ?? documents.hold(revisionId, await readDocument(db, revisionId));
}

/** The result of an assessment that is known to exist. */
export async function resultOf(db: Database, assessmentId: string): Promise<Assessment> {
  return results.get(assessmentId) ?? results.hold(assessmentId, await readResult(db, assessmentId));
}
