// Where an input of a worked step comes from, as a link to follow.

/** How a page leads to what lies behind a number. */
export interface WorkedLinks {
  /** Words and address of a field of the design; null when the path is no field. */
  readonly field: (path: string) => { readonly text: string; readonly href: string } | null;
  /** Words of a catalogue row, and its address on the handbook's materials page where it has one. */
  readonly catalog: (row: string) => { readonly text: string; readonly href: string | null } | null;
  /** Name of another worked step, by its key. */
  readonly step: (key: string) => string | null;
}

/** `from` is `field:…`, `catalog:…`, `step:…` or `practice:…`. */
export function StepOrigin({ from, links }: { readonly from: string; readonly links: WorkedLinks }) {
  const cut = from.indexOf(':');
  const kind = from.slice(0, cut);
  const rest = from.slice(cut + 1);
  if (kind === 'practice') return <span>{rest}</span>;
  if (kind === 'step') {
    const name = links.step(rest);
    return name === null ? <span>worked elsewhere</span> : <a href={`#step-${rest}`}>{name}</a>;
  }
  const target = kind === 'field' ? links.field(rest) : kind === 'catalog' ? links.catalog(rest) : null;
  if (target === null || target.href === null) return <span>{target?.text ?? rest}</span>;
  return <a href={target.href}>{target.text}</a>;
}
