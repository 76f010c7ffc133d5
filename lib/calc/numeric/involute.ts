// The involute function and its inverse, on which all tooth geometry rests.

/** inv α = tan α − α; α in rad, |α| < π/2. */
export function involute(alpha: number): number {
  return Math.tan(alpha) - alpha;
}

/**
 * The angle in rad, 0 ≤ α < π/2, whose involute is `inv`. NaN for a negative `inv`, for which there is no such angle.
 *
 * Newton's method. tan α − α is convex and rises, and both α³/3 ≤ inv α and tan α < inv α + π/2 bound the root from
 * above, so each step comes down towards the root and none can pass it.
 */
export function inverseInvolute(inv: number): number {
  if (!(inv >= 0)) return Number.NaN;
  if (inv === 0) return 0;
  let alpha = Math.min(Math.cbrt(3 * inv), Math.atan(inv + Math.PI / 2));
  for (let step = 0; step < 60; step++) {
    const t = Math.tan(alpha);
    const next = alpha - (t - alpha - inv) / (t * t);
    // Rounding ends the descent: the first step that no longer comes down is at the root.
    if (!(next < alpha)) return alpha;
    alpha = next;
  }
  return alpha;
}
