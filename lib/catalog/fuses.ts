// How fast fuses open: the limits of time that standards and makers print for multiples of the rating, and what they break.

/** One multiple of the rating, and the least and greatest time in s that a link may take there; null: no limit is set. */
export interface FuseGate {
  readonly times: number;
  readonly least: number | null;
  readonly most: number | null;
}

export interface FuseBand {
  readonly label: string;
  /** Gates from the smallest multiple to the largest. */
  readonly gates: readonly FuseGate[];
  /** Greatest rating that the band is printed for, A. */
  readonly upTo: number;
  /** Direct current that it is sure to break, A, or as a multiple of its rating where that is more. */
  readonly breaks: { readonly current: number; readonly times: number };
  readonly source: string;
  readonly basis: 'sourced' | 'memory';
}

const hour = 3600;

/**
 * Blade links: the shorter times of the small body (type C, to 40 A) and the longer ones of the large body (type E, 20 A
 * to 80 A), since the rating alone does not tell which it is. Quick and time-lag links: the tube sizes of IEC 60127-2.
 */
export const fuseBands = {
  fast: {
    label: 'Fast',
    gates: [
      { times: 1.5, least: hour, most: null },
      { times: 2.1, least: null, most: hour / 2 },
      { times: 2.75, least: 0.05, most: 2 },
      { times: 4, least: 0.01, most: 0.3 },
      { times: 10, least: null, most: 0.02 },
    ],
    upTo: 10,
    breaks: { current: 35, times: 10 },
    source:
      'IEC 60127-2, quick-acting links to 10 A, as printed on a public page; breaking current of low-breaking links',
    basis: 'sourced',
  },
  blade: {
    label: 'Automotive blade',
    gates: [
      { times: 1, least: 100 * hour, most: null },
      { times: 1.35, least: 0.75, most: hour / 2 },
      { times: 2, least: 0.15, most: 50 },
      { times: 3.5, least: 0.08, most: 7 },
      { times: 6, least: null, most: 1 },
    ],
    upTo: 80,
    breaks: { current: 1000, times: 0 },
    source:
      'Makers’ sheets of 32 V blade links to ISO 8820-3, small and large body, as copied in open hardware notes: the widest of both',
    basis: 'sourced',
  },
  slow: {
    label: 'Time-lag',
    gates: [
      { times: 1.5, least: hour, most: null },
      { times: 2.1, least: null, most: 120 },
      { times: 2.75, least: 0.6, most: 10 },
      { times: 4, least: 0.15, most: 3 },
      { times: 10, least: 0.02, most: 0.3 },
    ],
    upTo: 10,
    breaks: { current: 35, times: 10 },
    source: 'IEC 60127-2, time-lag links to 10 A, from memory; breaking current of low-breaking links',
    basis: 'memory',
  },
} as const satisfies Record<string, FuseBand>;

export type FuseKey = keyof typeof fuseBands;

/** The band behind a key, in one shape for all. */
export function fuseBand(key: FuseKey): FuseBand {
  return fuseBands[key];
}

/** Two neighbouring points of one edge of a band: multiples of the rating and times in s. */
export interface FuseSpan {
  readonly from: { readonly times: number; readonly time: number };
  readonly to: { readonly times: number; readonly time: number };
}

type Edge = 'least' | 'most';

/** The points that an edge of a band is drawn through. */
export function fuseEdge(
  key: FuseKey,
  edge: Edge,
): readonly { readonly times: number; readonly time: number }[] {
  return fuseBand(key).gates.flatMap((gate) => {
    const time = gate[edge];
    return time === null ? [] : [{ times: gate.times, time }];
  });
}

/** The span of an edge that holds a multiple of the rating; undefined outside the points. */
export function spanAtMultiple(key: FuseKey, edge: Edge, times: number): FuseSpan | undefined {
  return spanWhere(key, edge, (from, to) => from.times <= times && times <= to.times);
}

/** The span of an edge that holds a time in s; undefined outside the points. */
export function spanAtTime(key: FuseKey, edge: Edge, time: number): FuseSpan | undefined {
  return spanWhere(key, edge, (from, to) => to.time <= time && time <= from.time);
}

type Point = FuseSpan['from'];

function spanWhere(
  key: FuseKey,
  edge: Edge,
  holds: (from: Point, to: Point) => boolean,
): FuseSpan | undefined {
  const points = fuseEdge(key, edge);
  for (let i = 1; i < points.length; i += 1) {
    const [from, to] = [points[i - 1], points[i]];
    if (from !== undefined && to !== undefined && holds(from, to)) return { from, to };
  }
  return undefined;
}
