// Where the browser saves the draft: edits in, the new version or the reason why not out.
import { z } from 'zod';
import type { SaveAnswer } from '@/lib/preview/send';
import { saveDraft } from '@/lib/service/drafts/save-draft';
import { tell } from '@/lib/service/failures';
import { currentViewer } from '@/lib/service/sign-in/page-session';
import type { DraftStale } from '@/lib/service/views/draft';

const body = z.object({ baseVersion: z.int(), edits: z.array(z.unknown()) });

export async function POST(
  request: Request,
  { params }: { params: Promise<{ number: string }> },
): Promise<Response> {
  // Another site's page cannot send JSON here without being asked first; a foreign origin is refused all the same.
  const origin = request.headers.get('origin');
  if (origin !== null && new URL(origin).host !== request.headers.get('host'))
    return answer({ kind: 'refused', sentence: 'Not from here.' }, 403);
  const sent = body.safeParse(await request.json().catch(() => null));
  if (!sent.success) return answer({ kind: 'refused', sentence: 'These edits cannot be read.' }, 400);
  // The use case checks each edit; here only the frame is known.
  const edits = sent.data.edits as Parameters<typeof saveDraft>[1]['edits'];
  const result = await saveDraft(await currentViewer(), {
    design: (await params).number,
    baseVersion: sent.data.baseVersion,
    edits,
  });
  if (result.ok) return answer({ kind: 'saved', version: result.value.version }, 200);
  const { status, sentence } = tell(result.error);
  if (result.error.code !== 'draft.stale') return answer({ kind: 'refused', sentence }, status);
  const stale = result.error.detail as DraftStale;
  return answer(
    {
      kind: 'stale',
      by: stale.updatedBy.name,
      at: stale.updatedAt,
      version: stale.version,
      content: stale.content,
    },
    409,
  );
}

function answer(said: SaveAnswer, status: number): Response {
  return Response.json(said, { status, headers: { 'cache-control': 'no-store' } });
}
