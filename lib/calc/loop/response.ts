// Frequency response of any open loop, read as a curve in the complex plane: margins, stability, greatest gain with margins kept.

/** A complex number that is written to, so that a sweep makes no garbage. */
export interface Complex {
  re: number;
  im: number;
}

/** Writes the open loop at a frequency in rad/s (above 0) to `out`. The loop has no pole right of the imaginary axis. */
export type Response = (omega: number, out: Complex) => void;

/**
 * numerator / denominator · exp(−s delay), coefficients with the highest power first, delay in s.
 * No root of the denominator lies right of the imaginary axis.
 */
export function rational(numerator: readonly number[], denominator: readonly number[], delay = 0): Response {
  const top = { re: 0, im: 0 };
  const bottom = { re: 0, im: 0 };
  return (omega, out) => {
    polynomial(numerator, omega, top);
    polynomial(denominator, omega, bottom);
    divide(top, bottom, out);
    turn(out, -omega * delay);
  };
}

export interface ResponseMargins {
  /** Whether the closed loop comes to rest, by the turns of the curve about −1. */
  readonly stable: boolean;
  /** rad; the least over all crossings of gain 1, below 0 when the loop is not stable. Undefined without a crossing. */
  readonly phaseMargin: number | undefined;
  /** rad/s of that crossing. */
  readonly gainCrossover: number | undefined;
  /** Factor on the gain that brings the loop to the limit; below 1 when it is not stable. Undefined where none does. */
  readonly gainMargin: number | undefined;
  /** rad/s of the oscillation at that limit. */
  readonly phaseCrossover: number | undefined;
}

/** Frequencies (rad/s, ascending) with the loop there, swept once for all that is read off them. */
export interface Sweep {
  readonly response: Response;
  readonly omega: Float64Array;
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/** Sweeps from low to high (rad/s), `perDecade` frequencies a decade and those of `also`, e.g. of resonances. */
export function sweep(
  response: Response,
  low: number,
  high: number,
  also: readonly number[] = [],
  perDecade = 64,
): Sweep {
  const steps = Math.ceil(perDecade * Math.log10(high / low));
  const omega = new Float64Array(steps + 1 + also.length);
  for (let i = 0; i <= steps; i += 1) omega[i] = low * (high / low) ** (i / steps);
  also.forEach((w, i) => {
    omega[steps + 1 + i] = Math.min(Math.max(w, low), high);
  });
  if (also.length > 0) omega.sort();
  const re = new Float64Array(omega.length);
  const im = new Float64Array(omega.length);
  const at = { re: 0, im: 0 };
  for (let i = 0; i < omega.length; i += 1) {
    response(omega[i] ?? 0, at);
    re[i] = at.re;
    im[i] = at.im;
  }
  return { response, omega, re, im };
}

/** The same frequencies with a controller before the plant; the plant is not worked again. */
export function through(plant: Sweep, controller: Response): Sweep {
  const { omega, response } = plant;
  const re = new Float64Array(omega.length);
  const im = new Float64Array(omega.length);
  const at = { re: 0, im: 0 };
  for (let i = 0; i < omega.length; i += 1) {
    controller(omega[i] ?? 0, at);
    const [x, y] = [plant.re[i] ?? 0, plant.im[i] ?? 0];
    re[i] = at.re * x - at.im * y;
    im[i] = at.re * y + at.im * x;
  }
  const before = { re: 0, im: 0 };
  return {
    omega,
    re,
    im,
    response: (w, out) => {
      response(w, out);
      controller(w, before);
      multiply(out, before);
    },
  };
}

/**
 * Margins of the loop times `gain`, over every crossing within the sweep. Stability follows from the turns of the curve
 * about −1 (Nyquist), so that resonances that cross gain 1 again are told apart. The sweep must begin where the loop's
 * gain is far above or far below 1, and end where it is below 1.
 */
export function marginsOf(swept: Sweep, gain = 1): ResponseMargins {
  const stable = turnsAbout(swept, gain) === 0;
  let phaseMargin: number | undefined;
  let gainCrossover: number | undefined;
  let gainMargin: number | undefined;
  let phaseCrossover: number | undefined;
  const { omega, re, im } = swept;
  const at = { re: 0, im: 0 };
  for (let i = 1; i < omega.length; i += 1) {
    const [low, high] = [omega[i - 1] ?? 0, omega[i] ?? 0];
    const [x0, y0, x1, y1] = [re[i - 1] ?? 0, im[i - 1] ?? 0, re[i] ?? 0, im[i] ?? 0];
    if ((gain * sizeOf(x0, y0) - 1) * (gain * sizeOf(x1, y1) - 1) <= 0 && low < high) {
      const w = crossing(swept.response, low, high, at, (l) => gain * sizeOf(l.re, l.im) - 1);
      const left = Math.atan2(-at.im, -at.re);
      const margin = stable ? Math.abs(left) : left;
      if (phaseMargin === undefined || margin < phaseMargin) [phaseMargin, gainCrossover] = [margin, w];
    }
    if (y0 * y1 < 0 && x0 < 0 && x1 < 0) {
      const w = crossing(swept.response, low, high, at, (l) => l.im);
      const factor = 1 / (gain * Math.abs(at.re));
      // The first limit on the way up; on the way down only for a loop that is beyond one already.
      const counts = stable ? factor > 1 : factor < 1;
      const nearer = gainMargin === undefined || factor < gainMargin;
      if (counts && nearer) [gainMargin, phaseCrossover] = [factor, w];
    }
  }
  return { stable, phaseMargin, gainCrossover, gainMargin, phaseCrossover };
}

/**
 * The greatest factor on the loop that keeps a phase margin (rad) wherever its gain passes 1 and a gain margin (factor)
 * wherever its phase passes −180°; undefined where none does. By the frequencies swept, between them by straight lines.
 */
export function greatestGain(swept: Sweep, phaseMargin: number, gainMargin: number): number | undefined {
  const { omega, re, im } = swept;
  const last = omega.length - 1;
  const crosses = (i: number) =>
    (im[i - 1] ?? 0) * (im[i] ?? 0) < 0 && (re[i] ?? 0) < 0 && (re[i - 1] ?? 0) < 0;
  // Phase above −180°, followed from where three integrators and a little lead can begin.
  const above = new Float64Array(last + 1);
  const sizes = new Float64Array(last + 1);
  let phase = Math.PI / 6;
  for (let i = 0; i <= last; i += 1) {
    const [x, y] = [re[i] ?? 0, im[i] ?? 0];
    phase = continued(Math.atan2(-y, -x), phase);
    above[i] = phase;
    sizes[i] = Math.sqrt(x * x + y * y);
  }
  const size = (i: number) => sizes[i] ?? 0;
  const near = (i: number) => Math.abs(wrapped(above[i] ?? 0)) < phaseMargin;
  // From the high end: what all frequencies above allow.
  const most = new Float64Array(last + 2).fill(Number.POSITIVE_INFINITY);
  for (let i = last; i > 0; i -= 1) {
    const gain = crosses(i) ? 1 / (gainMargin * size(i)) : near(i) ? 1 / size(i) : Number.POSITIVE_INFINITY;
    most[i] = Math.min(most[i + 1] ?? 0, gain);
  }
  // From the low end: what all frequencies below ask.
  let least = 0;
  let found: number | undefined;
  for (let i = 0; i < last; i += 1) {
    if (i > 0 && crosses(i)) least = Math.max(least, gainMargin / size(i));
    if (near(i)) least = Math.max(least, 1 / size(i));
    const here = above[i] ?? 0;
    const next = above[i + 1] ?? 0;
    if (here < phaseMargin) continue;
    const falls = next < phaseMargin;
    const part = falls ? (here - phaseMargin) / (here - next) : 1;
    const gain = 1 / (size(i) * (size(i + 1) / size(i)) ** part);
    const allowed = Math.min(gain, (falls ? most[i + 2] : most[i + 1]) ?? 0);
    if (allowed >= 1 / size(i) && allowed > least && allowed > (found ?? 0)) found = allowed;
  }
  return found;
}

/** The same angle, in whole turns nearest to another. */
function continued(angle: number, near: number): number {
  return near + wrapped(angle - near);
}

/** Turns of 1 + gain·L about 0, counted in half turns: the poles of the closed loop right of the imaginary axis. */
function turnsAbout({ re, im }: Sweep, gain: number): number {
  // At its low end the phase of the loop lies between that of three integrators and a little above none.
  const start = Math.atan2(im[0] ?? 0, re[0] ?? 0);
  const far = sizeOf(re[0] ?? 0, im[0] ?? 0) * gain > 1;
  let angle = far
    ? start > Math.PI / 6
      ? start - 2 * Math.PI
      : start
    : Math.atan2(gain * (im[0] ?? 0), 1 + gain * (re[0] ?? 0));
  let before = Math.atan2(gain * (im[0] ?? 0), 1 + gain * (re[0] ?? 0));
  angle += far ? wrapped(before - start) : 0;
  for (let i = 1; i < re.length; i += 1) {
    const here = Math.atan2(gain * (im[i] ?? 0), 1 + gain * (re[i] ?? 0));
    angle += wrapped(here - before);
    before = here;
  }
  return Math.round(-(angle - before) / Math.PI);
}

/** Bisects for the frequency where `f` changes its sign; `at` then holds the loop there. */
function crossing(
  response: Response,
  from: number,
  to: number,
  at: Complex,
  f: (loop: Complex) => number,
): number {
  let [low, high] = [from, to];
  response(low, at);
  const sign = Math.sign(f(at)) || 1;
  for (let n = 0; n < 45; n += 1) {
    const middle = Math.sqrt(low * high);
    response(middle, at);
    if (f(at) * sign > 0) low = middle;
    else high = middle;
  }
  response(high, at);
  return high;
}

/** Many times faster than Math.hypot; the numbers of a loop are far from the ends of the range. */
function sizeOf(re: number, im: number): number {
  return Math.sqrt(re * re + im * im);
}

function wrapped(angle: number): number {
  return angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));
}

/** By Horner's rule at s = j omega. */
function polynomial(coefficients: readonly number[], omega: number, out: Complex): void {
  let [re, im] = [0, 0];
  for (const c of coefficients) [re, im] = [c - im * omega, re * omega];
  out.re = re;
  out.im = im;
}

/** a / b into `out`, which may be either. */
export function divide(a: Complex, b: Complex, out: Complex): void {
  const size = b.re * b.re + b.im * b.im;
  const re = (a.re * b.re + a.im * b.im) / size;
  out.im = (a.im * b.re - a.re * b.im) / size;
  out.re = re;
}

/** Multiplies z by another in its place. */
export function multiply(z: Complex, by: Complex): void {
  const re = z.re * by.re - z.im * by.im;
  z.im = z.re * by.im + z.im * by.re;
  z.re = re;
}

/** Turns a number by an angle, rad. */
export function turn(z: Complex, angle: number): void {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const re = z.re * c - z.im * s;
  z.im = z.re * s + z.im * c;
  z.re = re;
}
