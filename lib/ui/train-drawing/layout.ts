// Where the axes and circles of a train go, seen from the motor: axis to axis by distance and direction.
import type { Member, StageMembers } from './members';

interface Point {
  readonly x: number;
  readonly y: number;
}

export interface DrawnCircle extends Point {
  readonly reference: number;
  /** Radius of the tip circle, or null. */
  readonly tip: number | null;
}

/** A wheel seen edge-on: its corners, in order. */
export type DrawnEdge = readonly Point[];

export interface TrainLayout {
  readonly width: number;
  readonly height: number;
  readonly axes: readonly (Point & { readonly name: string })[];
  readonly circles: readonly DrawnCircle[];
  readonly edges: readonly DrawnEdge[];
  /** From axis to axis; dashed where the direction is not entered. */
  readonly lines: readonly { readonly from: Point; readonly to: Point; readonly known: boolean }[];
  /** The two straight runs of each belt. */
  readonly belts: readonly { readonly from: Point; readonly to: Point }[];
}

const width = 420;
const margin = 22;
/** Beyond this the drawing of a tall train would fill the screen. */
const tallest = 420;

/** Lays stages out one after another; all lengths in metres, upwards positive. */
export function trainLayout(stages: readonly StageMembers[]): TrainLayout {
  const axes: (Point & { name: string })[] = [{ x: 0, y: 0, name: 'M' }];
  const raw = {
    circles: [] as DrawnCircle[],
    edges: [] as DrawnEdge[],
    lines: [] as TrainLayout['lines'][number][],
  };
  const belts: { from: Point; to: Point }[] = [];
  let here: Point = { x: 0, y: 0 };
  stages.forEach((stage, i) => {
    const turn = ((stage.direction ?? 0) * Math.PI) / 180;
    const next = { x: here.x + stage.distance * Math.cos(turn), y: here.y + stage.distance * Math.sin(turn) };
    for (const member of stage.members) {
      const centre = member.on === 'input' ? here : next;
      if (member.edge === undefined) raw.circles.push(...circlesOf(member, centre));
      else raw.edges.push(edgeOf(member, member.edge, centre, turn));
    }
    if (stage.kind === 'belt') belts.push(...runsOf(stage, here, next));
    if (stage.distance > 0) raw.lines.push({ from: here, to: next, known: stage.direction !== null });
    const shared = axes.find((a) => Math.hypot(a.x - next.x, a.y - next.y) < 1e-9);
    // Two shafts about one axis share its cross.
    if (shared === undefined) axes.push({ ...next, name: String(i + 1) });
    else shared.name += `, ${i + 1}`;
    here = next;
  });
  return onPaper({ ...raw, axes, belts });
}

function circlesOf({ diameter, tip, orbit }: Member, centre: Point): DrawnCircle[] {
  const radii = { reference: diameter / 2, tip: tip === null ? null : tip / 2 };
  if (orbit === undefined) return [{ ...centre, ...radii }];
  return Array.from({ length: orbit.count }, (_, i) => {
    const turn = Math.PI / 2 + (2 * Math.PI * i) / orbit.count;
    const at = { x: centre.x + orbit.radius * Math.cos(turn), y: centre.y + orbit.radius * Math.sin(turn) };
    return { ...at, ...radii };
  });
}

/** Its axis lies across the line from the worm; along that line it is as long as its diameter. */
function edgeOf({ diameter }: Member, face: number, centre: Point, turn: number): DrawnEdge {
  const [along, across] = [diameter / 2, face / 2];
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const corners = [
    [1, 1],
    [-1, 1],
    [-1, -1],
    [1, -1],
  ] as const;
  return corners.map(([a, b]) => ({
    x: centre.x + a * along * c - b * across * s,
    y: centre.y + a * along * s + b * across * c,
  }));
}

/** The outer tangents of two pulleys. */
function runsOf(stage: StageMembers, from: Point, to: Point): { from: Point; to: Point }[] {
  const [r1, r2] = stage.members.map((m) => m.diameter / 2);
  if (r1 === undefined || r2 === undefined || stage.distance <= Math.abs(r1 - r2)) return [];
  const line = Math.atan2(to.y - from.y, to.x - from.x);
  const lean = Math.acos((r1 - r2) / stage.distance);
  return [line + lean, line - lean].map((a) => ({
    from: { x: from.x + r1 * Math.cos(a), y: from.y + r1 * Math.sin(a) },
    to: { x: to.x + r2 * Math.cos(a), y: to.y + r2 * Math.sin(a) },
  }));
}

type Raw = Omit<TrainLayout, 'width' | 'height'>;

/** To scale on the paper, downwards positive. */
function onPaper(raw: Raw): TrainLayout {
  const box = boxOf(raw);
  const scale = Math.min((width - 2 * margin) / box.width, (tallest - 2 * margin) / box.height);
  const put = (p: Point): Point => ({
    x: margin + (p.x - box.left) * scale,
    y: margin + (box.top - p.y) * scale,
  });
  return {
    width: box.width * scale + 2 * margin,
    height: box.height * scale + 2 * margin,
    axes: raw.axes.map((a) => ({ ...put(a), name: a.name })),
    circles: raw.circles.map((c) => ({
      ...put(c),
      reference: c.reference * scale,
      tip: c.tip === null ? null : c.tip * scale,
    })),
    edges: raw.edges.map((corners) => corners.map(put)),
    lines: raw.lines.map((l) => ({ ...l, from: put(l.from), to: put(l.to) })),
    belts: raw.belts.map((b) => ({ from: put(b.from), to: put(b.to) })),
  };
}

function boxOf({ circles, edges }: Raw) {
  const points = [
    ...circles.flatMap((c) => {
      const r = Math.max(c.reference, c.tip ?? 0);
      return [
        { x: c.x - r, y: c.y - r },
        { x: c.x + r, y: c.y + r },
      ];
    }),
    ...edges.flat(),
  ];
  const [xs, ys] = [points.map((p) => p.x), points.map((p) => p.y)];
  const [left, right, bottom, top] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  return { left, top, width: right - left, height: top - bottom };
}
