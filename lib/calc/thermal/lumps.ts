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

/** x → M x + v, what a stretch of time does to the rises: rows (a b c), (d e f), (g h i) of M, and v = (u, v, w). */
export interface Course {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
  readonly g: number;
  readonly h: number;
  readonly i: number;
  readonly u: number;
  readonly v: number;
  readonly w: number;
}

const terms = 12;

/** What `time` s (≥ 0) of a load do to the rises: the exponential of the heat balances by scaling and squaring. */
export function courseOf(nodes: TwoNodes, load: LumpLoad, time: number): Course {
  const rates = ratesOf(nodes, load);
  const { a, c, e, g, h, i } = rates;
  const norm = Math.max(Math.abs(a), Math.abs(e), c, g + h - i) * time;
  const halvings = norm > 0.25 ? Math.ceil(Math.log2(norm / 0.25)) : 0;
  let course = series(rates, time / 2 ** halvings);
  for (let n = 0; n < halvings; n += 1) course = after(course, course);
  return course;
}

/** The course of `first`, then of `then`. */
export function after(first: Course, then: Course): Course {
  const both = product(then, first);
  return {
    a: both.a,
    b: both.b,
    c: both.c,
    d: both.d,
    e: both.e,
    f: both.f,
    g: both.g,
    h: both.h,
    i: both.i,
    u: both.u + then.u,
    v: both.v + then.v,
    w: both.w + then.w,
  };
}

export function applied(m: Course, x: LumpRises): LumpRises {
  return {
    worst: m.a * x.worst + m.b * x.others + m.c * x.case + m.u,
    others: m.d * x.worst + m.e * x.others + m.f * x.case + m.v,
    case: m.g * x.worst + m.h * x.others + m.i * x.case + m.w,
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
function kept({ a, b, c, d, e, f, g, h, i }: Course): number {
  return Math.max(a + b + c, d + e + f, g + h + i);
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
  return {
    a: (share * copperLoss * growth) / c - through,
    b: 0,
    c: through,
    d: 0,
    e: (rest * copperLoss * growth) / c - through,
    f: through,
    g: 1 / (3 * r * shell),
    h: 2 / (3 * r * shell),
    i: -(1 / r + 1 / out) / shell,
    u: (share * copperLoss + ironLoss) / c,
    v: (rest * copperLoss + ironLoss) / c,
    w: caseLoss / shell,
  };
}

/** M of `p` times all of `q`; v without that of `p`. */
function product(p: Course, q: Course): Course {
  return {
    a: p.a * q.a + p.b * q.d + p.c * q.g,
    b: p.a * q.b + p.b * q.e + p.c * q.h,
    c: p.a * q.c + p.b * q.f + p.c * q.i,
    d: p.d * q.a + p.e * q.d + p.f * q.g,
    e: p.d * q.b + p.e * q.e + p.f * q.h,
    f: p.d * q.c + p.e * q.f + p.f * q.i,
    g: p.g * q.a + p.h * q.d + p.i * q.g,
    h: p.g * q.b + p.h * q.e + p.i * q.h,
    i: p.g * q.c + p.h * q.f + p.i * q.i,
    u: p.a * q.u + p.b * q.v + p.c * q.w,
    v: p.d * q.u + p.e * q.v + p.f * q.w,
    w: p.g * q.u + p.h * q.v + p.i * q.w,
  };
}

/** exp(A t) with its forced part, by its power series: t is short. */
function series(rates: Course, time: number): Course {
  let sum: Course = { a: 1, b: 0, c: 0, d: 0, e: 1, f: 0, g: 0, h: 0, i: 1, u: 0, v: 0, w: 0 };
  let term = rates;
  let scale = time;
  for (let k = 1; ; k += 1) {
    sum = added(sum, term, scale);
    if (k === terms) return sum;
    term = product(rates, term);
    scale *= time / (k + 1);
  }
}

function added(p: Course, q: Course, by: number): Course {
  return {
    a: p.a + q.a * by,
    b: p.b + q.b * by,
    c: p.c + q.c * by,
    d: p.d + q.d * by,
    e: p.e + q.e * by,
    f: p.f + q.f * by,
    g: p.g + q.g * by,
    h: p.h + q.h * by,
    i: p.i + q.i * by,
    u: p.u + q.u * by,
    v: p.v + q.v * by,
    w: p.w + q.w * by,
  };
}
