// Traces rendered in this process, by the hash of their facts. They have a shelf of their own, so that following many
// numbers never pushes out the sheets that pages are made of.
import type { ReactNode } from 'react';
import { toMarkup } from '../unchanging/made-once';

const made = new Map<string, string>();
/** Some 100 kB each. */
const most = 60;

/** The markup under an id; made when it is not there. */
export async function tracesMade(id: string, element: () => ReactNode): Promise<string> {
  const known = made.get(id);
  const markup = known ?? (await toMarkup(element()));
  // Put at the end: the map's order is that of the last use.
  made.delete(id);
  made.set(id, markup);
  if (made.size > most) made.delete(made.keys().next().value ?? '');
  return markup;
}
