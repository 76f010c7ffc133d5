// A part of a page that follows from given facts alone: rendered once for these facts, then kept (see made-once).
import { createHash } from 'node:crypto';
import { headers } from 'next/headers';
import type { ReactNode } from 'react';
import { makeOnce } from './made-once';
import { SetMarkup } from './set-markup';

interface UnchangingProps {
  /** Everything that the children follow from, or its hash: equal facts, written as JSON, get the same markup. */
  readonly from: readonly unknown[];
  /** Made of lib/ui components without state, and plain links. */
  readonly children: ReactNode;
}

export async function Unchanging({ from, children }: UnchangingProps) {
  const id = createHash('sha256').update(JSON.stringify(from)).digest('base64url');
  const markup = await makeOnce(id, children);
  // A browser that opens a page gets the markup in its HTML, and needs no second copy in the data beside it. When the
  // page is brought in by script there is no HTML, and the data must hold it.
  const opensPage = (await headers()).get('accept')?.includes('text/html') ?? false;
  return <SetMarkup key={id} id={id} markup={opensPage ? null : markup} />;
}
