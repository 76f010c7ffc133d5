// Markup that follows from something unchanging, made once in this process and kept while it is asked for.
//
// A revision never changes, nor do its assessments: ladder, tables, curves and the worked sheet of a revision come out
// the same at every request. React would still work through thousands of elements each time, and would send all of them
// twice, as HTML for the eye and as data for its own use in the browser; that, not the database, is what a page costs.
// So such parts are rendered to text here, by the very components that the draft's preview uses, and kept under an id
// taken of everything they follow from: other facts are another id, so nothing ever has to be thrown away for being out of
// date. SetMarkup puts the text into the page.
import type { ReactNode } from 'react';
import { keepMarkup, markupOf } from './kept-markup';

/** Makes the markup of `element` unless it is kept already under this id. */
export async function makeOnce(id: string, element: ReactNode): Promise<string> {
  const known = markupOf(id);
  if (known !== null) return known;
  const markup = await toMarkup(element);
  keepMarkup(id, markup);
  return markup;
}

/** The element as text. */
export async function toMarkup(element: ReactNode): Promise<string> {
  // Past the bundler, which refuses this import on the side of the server that has only half of React.
  const { renderToStaticMarkup } = await import(/* turbopackIgnore: true */ 'react-dom/server');
  return plainLetters(renderToStaticMarkup(element));
}

/**
 * The same markup with every letter beyond ASCII written as its number. One Greek letter in a text makes the engine hold
 * and encode all of it at two bytes a letter, at each request.
 */
export function plainLetters(markup: string): string {
  return markup.replace(/[^\p{ASCII}]/gu, (letter) => `&#${letter.codePointAt(0)};`);
}
