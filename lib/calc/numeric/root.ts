// Roots of a function of one variable between two ends of opposite sign.

/**
 * A root of `f` in [low, high] by the ITP method (interpolate, truncate, project): never more than one step worse
 * than bisection, and superlinear on smooth functions.
 *
 * `tolerance` is the half-width of the last bracket, in the unit of the variable. Returns null when f has the same
 * sign at both ends, or a value that is not a number there: the caller decides what that means.
 *
 * Source: I. F. D. Oliveira, R. H. C. Takahashi, An Enhancement of the Bisection Method Average Performance
 * Preserving Minmax Optimality, ACM Transactions on Mathematical Software 47 (2021), article 5.
 */
export function bracketedRoot(
  f: (x: number) => number,
  low: number,
  high: number,
  tolerance = 1e-13,
): number | null {
  let a = low;
  let b = high;
  let fa = f(a);
  let fb = f(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa * fb < 0)) return null;
  // Below the spacing of doubles at this magnitude no bracket can shrink further.
  const eps = Math.max(tolerance, Number.EPSILON * Math.max(Math.abs(a), Math.abs(b)));
  const sign = fb > 0 ? 1 : -1;
  const k1 = 0.2 / (b - a);
  const steps = Math.max(1, Math.ceil(Math.log2((b - a) / (2 * eps)))) + 1;
  let radius = eps * 2 ** steps;
  for (let step = 0; b - a > 2 * eps && step <= steps + 1; step++) {
    const middle = (a + b) / 2;
    const falsi = (fb * a - fa * b) / (fb - fa);
    const side = middle >= falsi ? 1 : -1;
    const shift = k1 * (b - a) ** 2;
    const truncated = shift <= Math.abs(middle - falsi) ? falsi + side * shift : middle;
    const reach = Math.max(0, radius - (b - a) / 2);
    const x = Math.abs(truncated - middle) <= reach ? truncated : middle - side * reach;
    const fx = f(x);
    if (fx === 0) return x;
    if (sign * fx > 0) {
      b = x;
      fb = fx;
    } else {
      a = x;
      fa = fx;
    }
    radius /= 2;
  }
  return (a + b) / 2;
}
