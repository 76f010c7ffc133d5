// Unfolding numbers in their place: one listener for the whole page, and a trace fetched when it is first asked for.
import { fetchPiece, statusLine } from './piece';

export interface FollowedSide {
  /** Said above its trace where there are two; null where there is one. */
  readonly label: string | null;
  /** Address that gives the trace of a number, to which `of=…` is added. */
  readonly href: string;
}

const trigger = 'a[data-follow]';

/** Makes buttons of the links, and listens; the answer ends the listening. */
export function followNumbers(page: Document, sides: readonly FollowedSide[]): () => void {
  asButtons(page);
  const ending = new AbortController();
  const { signal } = ending;
  page.addEventListener('click', (event) => onClick(event, sides), { signal });
  page.addEventListener('keydown', (event) => onKey(event, sides), { signal });
  return () => ending.abort();
}

/** A link without script, a button that unfolds with it: all those within a page, or within a piece set into it. */
export function asButtons(within: ParentNode): void {
  for (const link of within.querySelectorAll(trigger)) {
    link.setAttribute('role', 'button');
    if (!link.hasAttribute('aria-expanded')) link.setAttribute('aria-expanded', 'false');
  }
}

function onClick(event: MouseEvent, sides: readonly FollowedSide[]): void {
  const plain = event.button === 0 && !(event.metaKey || event.ctrlKey || event.shiftKey || event.altKey);
  if (!plain || !(event.target instanceof Element)) return;
  const link = event.target.closest(trigger);
  if (link !== null) {
    event.preventDefault();
    toggle(link, sides);
    return;
  }
  const step = event.target.closest('a[data-step]');
  if (step === null) return;
  event.preventDefault();
  showStep(step);
}

/** A button answers to the space bar too. */
function onKey(event: KeyboardEvent, sides: readonly FollowedSide[]): void {
  if (event.key !== ' ' || !(event.target instanceof Element) || !event.target.matches(trigger)) return;
  event.preventDefault();
  toggle(event.target, sides);
}

function toggle(link: Element, sides: readonly FollowedSide[]): void {
  const open = link.getAttribute('aria-expanded') !== 'true';
  const place = placeOf(link);
  if (open) {
    // One place may serve several numbers of a drawing: the one before folds.
    const before = place.dataset.of;
    const of = nameOf(link);
    if (before !== undefined && before !== of) fold(place);
    place.dataset.of = of;
    link.setAttribute('aria-controls', place.id);
    if (before !== of) void fill(place, of, sides);
  }
  link.setAttribute('aria-expanded', String(open));
  shell(place).hidden = !open;
}

/** Every button of a place that stands open goes shut. */
function fold(place: HTMLElement): void {
  for (const other of document.querySelectorAll(`${trigger}[aria-controls="${CSS.escape(place.id)}"]`))
    other.setAttribute('aria-expanded', 'false');
}

/** `check-<key>`, `figure-<key>` or `curve-<key>`: said by the link, or by the row it stands in. */
function nameOf(link: Element): string {
  return link.getAttribute('data-follow') || (link.closest('tr[id]')?.id ?? '');
}

let places = 0;

/** The place of a trace: below its row, or at the end of the drawing or entry that the link stands in. */
function placeOf(link: Element): HTMLElement {
  const known = document.getElementById(hostOf(link).getAttribute('data-trace-place') ?? '');
  if (known !== null) return known;
  const host = hostOf(link);
  const place = document.createElement('div');
  place.id = `trace-place-${++places}`;
  place.className = 'trace-place';
  host.setAttribute('data-trace-place', place.id);
  if (host instanceof HTMLTableRowElement) {
    const row = document.createElement('tr');
    row.className = 'trace-row';
    const cell = row.insertCell();
    cell.colSpan = host.cells.length;
    cell.append(place);
    afterNote(host).after(row);
  } else host.append(place);
  return place;
}

function hostOf(link: Element): Element {
  return link.closest('tr, li, figure') ?? link.parentElement ?? link;
}

function afterNote(row: HTMLTableRowElement): Element {
  const next = row.nextElementSibling;
  return next?.classList.contains('ruled-note') ? next : row;
}

/** What is hidden with a place: its row where it has one, so that no empty line is left. */
function shell(place: HTMLElement): HTMLElement {
  return place.closest<HTMLElement>('.trace-row') ?? place;
}

async function fill(place: HTMLElement, of: string, sides: readonly FollowedSide[]): Promise<void> {
  place.setAttribute('aria-busy', 'true');
  place.replaceChildren(statusLine('Reading the worked sheet …'));
  const parts = await Promise.all(sides.map((side) => partOf(side, of)));
  // Meanwhile the place may serve another number.
  if (place.dataset.of !== of) return;
  place.replaceChildren(...parts.flat());
  place.removeAttribute('aria-busy');
}

async function partOf({ label, href }: FollowedSide, of: string): Promise<Node[]> {
  const { nodes } = await fetchPiece(href, of);
  return [...(label === null ? [] : [heading(label)]), ...nodes];
}

function heading(text: string): HTMLElement {
  const line = document.createElement('p');
  line.className = 'trace-side';
  line.textContent = text;
  return line;
}

/** Opens every fold around a step, and goes to it. */
function showStep(link: Element): void {
  const step = document.getElementById(link.getAttribute('href')?.slice(1) ?? '');
  if (!(step instanceof HTMLDetailsElement)) return;
  for (let fold: Element | null = step; fold !== null; fold = fold.parentElement)
    if (fold instanceof HTMLDetailsElement) fold.open = true;
  const head = step.querySelector('summary');
  head?.focus({ preventScroll: true });
  head?.scrollIntoView({ block: 'center' });
}
