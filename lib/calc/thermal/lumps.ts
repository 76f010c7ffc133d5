// The motor as three warm lumps: the worst phase, the other two, the case. Copper that warms loses more, so the course of a
// load is linear and its solution a matrix exponential: exact, below and beyond runaway.
import type { TwoNodes } from './course';

/** What heats the motor, W. `share` is the worst phase's loss over the mean: 2 at rest, 1 in motion. */
export interface LumpLoad {
  /** Copper loss of all phases with copper at ambient. */
  readonly copperLoss: number;
  /** Its growth, 1/K, referred to ambient. */
  readonly growth: number;
  readonly share: number;
  /** Constant loss that arises in the stator beside the winding. */
  readonly ironLoss: number;
  /** Constant loss that arises in the case (bearings). */
  readonly caseLoss: number;
}

/** Rises above ambient, K. */
export interface LumpRises {
  readonly worst: number;
  readonly others: number;
  readonly case: number;
}

export const coldLumps: LumpRises = { worst: 0, others: 0, case: 0 };

/** x → M x + v, what a stretch of time does to the rises: three rows of M and v in turn, twelve numbers. */
export type Course = readonly number[];

const terms = 12;

/** What `time` s (≥ 0) of a load do to the rises: the exponential of the heat balances by scaling and squaring. */
export function courseOf(nodes: TwoNodes, load: LumpLoad, time: number): Course {
  const rates = ratesOf(nodes, load);
  const [a = 0, , c = 0, , , f = 0, , , i = 0, j = 0, k = 0] = rates;
  const norm =
    Math.max(Math.abs(a), Math.abs(f), Math.abs(c), Math.abs(i) + Math.abs(j) + Math.abs(k)) * time;
  const halvings = norm > 0.25 ? Math.ceil(Math.log2(norm / 0.25)) : 0;
  let course = series(rates, time / 2 ** halvings);
  for (let n = 0; n < halvings; n += 1) course = after(course, course);
  return course;
}

/** The course of `first`, then of `then`. */
export function after(first: Course, then: Course): Course {
  const both = product(then, first);
  both[3] = (both[3] ?? 0) + (then[3] ?? 0);
  both[7] = (both[7] ?? 0) + (then[7] ?? 0);
  both[11] = (both[11] ?? 0) + (then[11] ?? 0);
  return both;
}

export function applied(course: Course, x: LumpRises): LumpRises {
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0, i = 0, j = 0, k = 0, l = 0] = course;
  return {
    worst: a * x.worst + b * x.others + c * x.case + d,
    others: e * x.worst + f * x.others + g * x.case + h,
    case: i * x.worst + j * x.others + k * x.case + l,
  };
}

/**
 * The rises to which a course that is gone through again and again comes back; null where it never does. Found by going
 * through it twice, four times, eight times and so on, until what it began with no longer counts.
 */
export function periodicRises(course: Course): LumpRises | null {
  let often = course;
  for (let i = 0; i < doublings; i += 1) {
    const left = kept(often);
    // Its matrix has no negative entries: what grows once grows for ever.
    if (!(left < 1e6)) return null;
    if (left < 1e-15) return applied(often, coldLumps);
    often = after(often, often);
  }
  return null;
}

/** Twice as often as any duty takes to settle that settles within an age. */
const doublings = 80;

/** How much of the rises that it begins with is left, at most. */
function kept(course: Course): number {
  const [a = 0, b = 0, c = 0, , e = 0, f = 0, g = 0, , i = 0, j = 0, k = 0] = course;
  return Math.max(a + b + c, e + f + g, i + j + k);
}

const levels = 30;

/** The courses of `horizon` s and of its halves, quarters and so on, the shortest first. */
export function halvedCourses(nodes: TwoNodes, load: LumpLoad, horizon: number): readonly Course[] {
  let course = courseOf(nodes, load, horizon / 2 ** levels);
  const halved = [course];
  for (let k = 1; k <= levels; k += 1) {
    course = after(course, course);
    halved.push(course);
  }
  return halved;
}

/**
 * Seconds until the worst phase has risen by `limit` K, or null if it has not within `horizon` s, whose halved courses are
 * given; known to a billionth of that. The phase must warm steadily, as it does from a colder state.
 */
export function timeToRises(
  halved: readonly Course[],
  limit: number,
  horizon: number,
  start: LumpRises = coldLumps,
): number | null {
  if (start.worst >= limit) return 0;
  let x = start;
  let time = 0;
  for (const [k, course] of [...halved.entries()].reverse()) {
    const next = applied(course, x);
    // A course that overflows has run away long before its end.
    if (!(next.worst < limit)) continue;
    if (k === levels) return null;
    x = next;
    time += horizon / 2 ** (levels - k);
  }
  return time;
}

function ratesOf(nodes: TwoNodes, load: LumpLoad): Course {
  const { windingToCase: r, caseToAmbient: out, windingCapacity: c, caseCapacity: shell } = nodes;
  const { copperLoss, growth, share, ironLoss, caseLoss } = load;
  const rest = (3 - share) / 2;
  const through = 1 / (r * c);
  return [
    (share * copperLoss * growth) / c - through,
    0,
    through,
    (share * copperLoss + ironLoss) / c,
    0,
    (rest * copperLoss * growth) / c - through,
    through,
    (rest * copperLoss + ironLoss) / c,
    1 / (3 * r * shell),
    2 / (3 * r * shell),
    -(1 / r + 1 / out) / shell,
    caseLoss / shell,
  ];
}

/** M of `p` times all of `q`; the last column without that of `p`. */
function product(p: Course, q: Course): number[] {
  const [a = 0, b = 0, c = 0, , e = 0, f = 0, g = 0, , i = 0, j = 0, k = 0] = p;
  const [A = 0, B = 0, C = 0, D = 0, E = 0, F = 0, G = 0, H = 0, I = 0, J = 0, K = 0, L = 0] = q;
  return [
    a * A + b * E + c * I,
    a * B + b * F + c * J,
    a * C + b * G + c * K,
    a * D + b * H + c * L,
    e * A + f * E + g * I,
    e * B + f * F + g * J,
    e * C + f * G + g * K,
    e * D + f * H + g * L,
    i * A + j * E + k * I,
    i * B + j * F + k * J,
    i * C + j * G + k * K,
    i * D + j * H + k * L,
  ];
}

/** exp(A t) with its forced part, by its power series: t is short. */
function series(rates: Course, time: number): Course {
  const sum = [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0];
  let term: Course = rates;
  let scale = time;
  for (let k = 1; ; k += 1) {
    for (let n = 0; n < 12; n += 1) sum[n] = (sum[n] ?? 0) + (term[n] ?? 0) * scale;
    if (k === terms) return sum;
    term = product(rates, term);
    scale *= time / (k + 1);
  }
}
