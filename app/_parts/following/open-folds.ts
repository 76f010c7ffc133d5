// Folds of which the content is left off the page (lib/ui/sheet/part-fold): it is fetched when the fold is first opened, by
// hand, by a link into it, or by the address of the page.
import { asButtons } from './follow-numbers';
import { fetchPiece, type Piece, statusLine } from './piece';

const away = 'details[data-away]';

/**
 * Listens for folds that open and for links into them; the answer ends the listening.
 * @param href address that gives the content of a fold, to which `of=…` is added
 */
export function openFolds(page: Document, href: string): () => void {
  const ending = new AbortController();
  const { signal } = ending;
  const onToggle = ({ target }: Event) => {
    if (target instanceof HTMLDetailsElement && target.open && target.matches(away)) void fill(target, href);
  };
  const onHash = () => void showAddressed(page, href);
  // The toggling of a fold does not bubble: it is heard on its way down.
  page.addEventListener('toggle', onToggle, { signal, capture: true });
  page.defaultView?.addEventListener('hashchange', onHash, { signal });
  onHash();
  return () => ending.abort();
}

async function fill(fold: HTMLDetailsElement, href: string): Promise<void> {
  fold.removeAttribute('data-away');
  fold.setAttribute('aria-busy', 'true');
  fold.querySelector(':scope > p')?.before(statusLine('Fetching …'));
  setIn(fold, await fetchPiece(href, fold.id));
}

/** A fold whose content did not come keeps its link to the sheet in full, and asks again when it is opened anew. */
function setIn(fold: HTMLDetailsElement, { ok, nodes }: Piece): void {
  fold.removeAttribute('aria-busy');
  for (const old of fold.querySelectorAll(':scope > [role="status"]')) old.remove();
  const line = fold.querySelector(':scope > p');
  if (ok) {
    line?.replaceWith(...nodes);
    fold.removeAttribute('data-away');
    asButtons(fold);
  } else {
    line?.before(...nodes);
    fold.setAttribute('data-away', '');
  }
}

/** What the address names and no fold of the page holds yet is fetched, with the fold around it, and gone to. */
async function showAddressed(page: Document, href: string): Promise<void> {
  const of = named(page.location.hash);
  if (!/^(figure|field)-/.test(of)) return;
  if (page.getElementById(of) === null) {
    const piece = await fetchPiece(href, of);
    const fold = page.getElementById(piece.fold ?? '');
    if (!(fold instanceof HTMLDetailsElement) || !piece.ok) return;
    if (fold.matches(away)) setIn(fold, piece);
  }
  const row = page.getElementById(of);
  for (let fold = row?.closest('details'); fold != null; fold = fold.parentElement?.closest('details'))
    fold.open = true;
  row?.scrollIntoView({ block: 'center' });
}

function named(hash: string): string {
  try {
    return decodeURIComponent(hash.slice(1));
  } catch {
    return '';
  }
}
