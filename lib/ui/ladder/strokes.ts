// Strokes that a pattern would need an id for: hatching cut to a rectangle, arrowheads, break signs.

/** 45° hatching inside a rectangle, `gap` apart along x, as one path. */
export function hatching(left: number, top: number, right: number, bottom: number, gap: number): string {
  const height = bottom - top;
  const parts: string[] = [];
  for (let foot = left - height + gap; foot < right; foot += gap) {
    // A line rising to the right from (foot, bottom) to (foot + height, top), cut to the rectangle.
    const x1 = Math.max(foot, left);
    const x2 = Math.min(foot + height, right);
    if (x2 <= x1) continue;
    parts.push(`M${n(x1)} ${n(bottom - (x1 - foot))}L${n(x2)} ${n(bottom - (x2 - foot))}`);
  }
  return parts.join('');
}

/** A filled arrowhead that points right, its tip at (x, y). */
export function arrowhead(x: number, y: number, length: number, half: number): string {
  return `M${n(x)} ${n(y)}l${-length} ${-half}v${2 * half}z`;
}

/** The zigzag of a broken line, centred on (x, y). */
export function breakSign(x: number, y: number): string {
  return `M${n(x - 8)} ${n(y)}l3 0l2.5 -6.5l5 13l2.5 -6.5l3 0`;
}

function n(value: number): string {
  return String(Math.round(value * 10) / 10);
}
