// What was typed into a form before its script ran: the page was there to type into, but nobody listened yet.
import type { PartRows } from '@/lib/preview/rows';

interface Typed {
  readonly path: string;
  readonly text: string;
}

/** The fields below `root` that no longer hold the text they were sent with. */
export function typedEarly(root: HTMLElement, parts: readonly PartRows[]): Typed[] {
  const sent = new Map(textsOf(parts));
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

function textsOf(parts: readonly PartRows[]): (readonly [string, string])[] {
  return parts
    .flatMap((part) => [
      ...part.fields,
      ...(part.stages ?? []).flatMap((s) => [...s.fields, ...s.gears.flatMap((g) => g.fields)]),
    ])
    .map((row) => [row.path, row.text]);
}
