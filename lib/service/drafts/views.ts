// A kept draft as pages see it.
import { pendingProblems } from '@/lib/design/edit';
import type { KeptDraft } from '@/lib/store/designs/drafts';
import type { DraftStale } from '../views/draft';

/** The draft as it stands, for whoever worked on an older one. */
export function draftNow(draft: KeptDraft): DraftStale {
  return {
    version: draft.version,
    updatedAt: draft.updatedAt.toISOString(),
    updatedBy: { userId: draft.updatedById, name: draft.updatedByName },
    content: draft.content,
    problems: pendingProblems(draft.content),
  };
}
