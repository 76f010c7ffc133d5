// A piece of a page, fetched when it is first asked for: a trace, or the content of a fold.

export interface Piece {
  /** What to set in, or words that say why there is nothing. */
  readonly nodes: readonly Node[];
  /** Name of the fold it belongs to, as the service gives it. */
  readonly fold: string | null;
  readonly ok: boolean;
}

/** @param base address that gives pieces, to which `of=…` is added */
export async function fetchPiece(base: string, of: string): Promise<Piece> {
  try {
    const answer = await fetch(`${base}${base.includes('?') ? '&' : '?'}of=${encodeURIComponent(of)}`);
    const fold = answer.headers.get('x-fold');
    if (answer.status === 404) return none('There is no such number here.');
    if (!answer.ok) return none(await answer.text());
    const template = document.createElement('template');
    template.innerHTML = await answer.text();
    return { nodes: [template.content], fold, ok: true };
  } catch {
    return none('It could not be fetched. Are you connected?');
  }
}

function none(sentence: string): Piece {
  return { nodes: [statusLine(sentence)], fold: null, ok: false };
}

/** A line that is read out when it is set in. */
export function statusLine(text: string): HTMLElement {
  const line = document.createElement('p');
  line.className = 'hush';
  line.setAttribute('role', 'status');
  line.textContent = text;
  return line;
}
