// Pieces of pages (traces, contents of folds) rendered in this process, by the hash of their facts, and the answer that
// carries one. They have a shelf of their own, so that following many numbers never pushes out the sheets that pages are
// made of.
import { createHash } from 'node:crypto';
import type { ReactNode } from 'react';
import { tell } from '@/lib/service/failures';
import { toMarkup } from '../unchanging/made-once';

const made = new Map<string, string>();
/** Some 100 kB each. */
const most = 60;

/** A short name for all that a piece follows from. */
export function pieceId(facts: readonly unknown[]): string {
  return createHash('sha256').update(JSON.stringify(facts)).digest('base64url').slice(0, 22);
}

/** The piece as an answer; a browser that has it asks only whether it may still show it. */
export async function pieceAnswer(
  request: Request,
  id: string,
  element: () => ReactNode,
  more: Readonly<Record<string, string>> = {},
): Promise<Response> {
  const headers = { ...more, etag: `"${id}"`, 'cache-control': 'private, no-cache' };
  if (request.headers.get('if-none-match') === headers.etag)
    return new Response(null, { status: 304, headers });
  const markup = await pieceMade(id, element);
  return new Response(markup, { headers: { ...headers, 'content-type': 'text/html; charset=utf-8' } });
}

/** Why there is no piece, in words. */
export function pieceRefused(error: Parameters<typeof tell>[0]): Response {
  const { status, sentence } = tell(error);
  return new Response(sentence, { status, headers: { 'cache-control': 'no-store' } });
}

/** The markup under an id; made when it is not there. */
async function pieceMade(id: string, element: () => ReactNode): Promise<string> {
  const known = made.get(id);
  const markup = known ?? (await toMarkup(element()));
  // Put at the end: the map's order is that of the last use.
  made.delete(id);
  made.set(id, markup);
  if (made.size > most) made.delete(made.keys().next().value ?? '');
  return markup;
}
