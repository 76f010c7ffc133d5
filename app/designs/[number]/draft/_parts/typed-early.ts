// What was typed into a form before its script ran: the page was there to type into, but nobody listened yet.
import { fieldsIn, type PartRows } from '@/lib/preview/rows';

interface Typed {
  readonly path: string;
  readonly text: string;
}

/** The fields below `root` that no longer hold the text they were sent with. */
export function typedEarly(root: HTMLElement, parts: readonly PartRows[]): Typed[] {
  const sent = new Map(parts.flatMap((part) => fieldsIn(part).map((row) => [row.path, row.text] as const)));
  const found: Typed[] = [];
  for (const input of root.querySelectorAll('input, select')) {
    if (!(input instanceof HTMLInputElement || input instanceof HTMLSelectElement)) continue;
    // Of a pair of radio buttons the chosen one speaks.
    if (input instanceof HTMLInputElement && input.type === 'radio' && !input.checked) continue;
    const text = sent.get(input.name);
    if (text !== undefined && text !== input.value) found.push({ path: input.name, text: input.value });
  }
  return found;
}
