// Sending edits to the server and reading its answer. The address is given by the page; the answer is checked here.
import { z } from 'zod';
import type { DraftContent, Edit } from '@/lib/design/edit';
import { openDocument } from '@/lib/design/open';
import type { Clash, QueueEvent } from './queue';

const answer = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('saved'), version: z.number() }),
  z.object({
    kind: z.literal('stale'),
    by: z.string(),
    at: z.string(),
    version: z.number(),
    content: z.object({ document: z.unknown(), pending: z.record(z.string(), z.string()) }),
  }),
  z.object({ kind: z.literal('refused'), sentence: z.string() }),
]);

/** What the draft's address answers; written by app/…/draft/save and read here. */
export type SaveAnswer =
  | { readonly kind: 'saved'; readonly version: number }
  | ({ readonly kind: 'stale' } & Clash)
  | { readonly kind: 'refused'; readonly sentence: string };

/** Sends edits that build on `baseVersion`. Never throws: no connection and no readable answer are both `failed`. */
export async function sendEdits(
  address: string,
  baseVersion: number,
  edits: readonly Edit[],
): Promise<QueueEvent> {
  try {
    const response = await fetch(address, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ baseVersion, edits }),
    });
    const read = answer.safeParse(await response.json());
    if (!read.success) return { on: 'failed' };
    return eventOf(read.data);
  } catch {
    return { on: 'failed' };
  }
}

function eventOf(read: z.infer<typeof answer>): QueueEvent {
  if (read.kind === 'saved') return { on: 'accepted', version: read.version };
  if (read.kind === 'refused') return { on: 'refused', sentence: read.sentence };
  const content = opened(read.content);
  if (content === null)
    return { on: 'refused', sentence: 'The saved draft cannot be read by this page; open it anew.' };
  return { on: 'clashed', clash: { by: read.by, at: read.at, version: read.version, content } };
}

function opened(content: { document: unknown; pending: Record<string, string> }): DraftContent | null {
  const read = openDocument(content.document);
  return read.ok ? { document: read.document, pending: content.pending } : null;
}
