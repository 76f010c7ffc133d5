// Rendering for the tests of components: static markup, as a reader without script gets it.
import type { ReactElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';

/** Markup of an element. */
export function markup(element: ReactElement): string {
  return renderToStaticMarkup(element);
}

/** The words a reader sees or hears: tags become spaces, entities are read, spaces fold. */
export function words(element: ReactElement): string {
  return markup(element)
    .replace(/<[^>]*>/g, ' ')
    .replace(/&quot;/g, '"')
    .replace(/&#x27;/g, '’')
    .replace(/&gt;/g, '>')
    .replace(/&lt;/g, '<')
    .replace(/&amp;/g, '&')
    .replace(/\s+/g, ' ')
    .trim();
}
