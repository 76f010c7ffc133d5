// Markup kept in this process, by an id.

interface Kept {
  readonly markup: string;
  usedAt: number;
}

/** Beyond this many the one longest unused is let go, unless a request that still needs it may be under way. */
const most = 120;
const requestMs = 10_000;

// On globalThis, because the server's two sides, the one that gathers a page's data and the one that writes its HTML,
// load this file each for itself.
const shared = globalThis as typeof globalThis & { pawlMarkup?: Map<string, Kept> };

function shelf(): Map<string, Kept> {
  shared.pawlMarkup ??= new Map();
  return shared.pawlMarkup;
}

/** The markup kept under an id; null when there is none. */
export function markupOf(id: string): string | null {
  const found = shelf().get(id);
  if (found === undefined) return null;
  found.usedAt = Date.now();
  // Moved to the end: the map's order is that of the last use.
  shelf().delete(id);
  shelf().set(id, found);
  return found.markup;
}

export function keepMarkup(id: string, markup: string): void {
  shelf().set(id, { markup, usedAt: Date.now() });
  for (const [oldest, { usedAt }] of shelf()) {
    if (shelf().size <= most || Date.now() - usedAt < requestMs) return;
    shelf().delete(oldest);
  }
}
