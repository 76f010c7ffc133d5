'use client';
// Sets markup that the server made (made-once) into the page.
import { useEffect, useRef, useState } from 'react';
import { markupOf } from './kept-markup';

/** In the browser: what pages opened so far hold, for the way back to them. */
const seen = new Map<string, string>();

interface SetMarkupProps {
  readonly id: string;
  /** Null on a page that is opened: its HTML holds the markup already. */
  readonly markup: string | null;
}

export function SetMarkup({ id, markup }: SetMarkupProps) {
  const place = useRef<HTMLDivElement>(null);
  const [html] = useState(() => markup ?? (typeof window === 'undefined' ? kept(id) : (seen.get(id) ?? '')));
  useEffect(() => {
    if (place.current !== null && !seen.has(id)) seen.set(id, place.current.innerHTML);
  }, [id]);
  // React leaves the markup of an opened page as it stands: it never compares what was set this way.
  return (
    <div
      ref={place}
      suppressHydrationWarning
      // biome-ignore lint/security/noDangerouslySetInnerHtml: rendered by React itself on the server
      dangerouslySetInnerHTML={{ __html: html }}
    />
  );
}

function kept(id: string): string {
  const markup = markupOf(id);
  if (markup === null) throw new Error('The markup of a part was let go before its page was written.');
  return markup;
}
