/**
 * A tooth cut point by point by its rack: an independent description of the fillet and the flank, with no formula of the
 * library in it. Lengths over the module, tooth axis along y, gear axis at the origin. Tangents and curvature are found by
 * differences between neighbouring points.
 */
import { bracketedRoot } from '@/lib/calc/numeric/root';

export interface Rack {
  /** Teeth; a virtual gear may have a fraction. */
  readonly z: number;
  readonly x: number;
  /** Pressure angle, rad. */
  readonly alpha: number;
  readonly dedendum: number;
  readonly tipRounding: number;
}

type Point = readonly [x: number, y: number];

/**
 * The point of the right fillet that the tool's rounded tip cuts when the rack stands `s` to the right. The normal at a
 * point of contact passes through the pitch point, so the point lies on the far side of the rounding's centre from there.
 */
function filletPoint(rack: Rack, s: number): Point {
  const r = rack.z / 2;
  const depth = rack.dedendum - rack.tipRounding;
  // The rounding touches the tool's tip line and its straight flank.
  const half = Math.PI / 4 - depth * Math.tan(rack.alpha) - rack.tipRounding / Math.cos(rack.alpha);
  const cx = Math.PI / 2 - half + s;
  const below = depth - rack.x;
  const reach = 1 + rack.tipRounding / Math.hypot(cx, below);
  const px = cx * reach;
  const py = r - below * reach;
  const turn = s / r;
  return [px * Math.cos(turn) - py * Math.sin(turn), px * Math.sin(turn) + py * Math.cos(turn)];
}

/** Rack positions between which the rounding cuts: from the bottom of the fillet to its end at the flank. */
function filletEnds(rack: Rack): readonly [bottom: number, flank: number] {
  const depth = rack.dedendum - rack.tipRounding;
  const half = Math.PI / 4 - depth * Math.tan(rack.alpha) - rack.tipRounding / Math.cos(rack.alpha);
  const bottom = -(Math.PI / 2 - half);
  return [bottom, bottom - (depth - rack.x) / Math.tan(rack.alpha)];
}

/** The right flank at radius R: an involute, laid out by unrolling a string from the base circle. */
function flankPoint(rack: Rack, radius: number): Point {
  const base = (rack.z / 2) * Math.cos(rack.alpha);
  const unrolled = (R: number) => {
    const roll = Math.sqrt((R / base) ** 2 - 1);
    return roll - Math.atan(roll);
  };
  const half =
    (Math.PI / 4 + rack.x * Math.tan(rack.alpha)) / (rack.z / 2) + unrolled(rack.z / 2) - unrolled(radius);
  return [radius * Math.sin(half), radius * Math.cos(half)];
}

/** Where the line square to the flank at radius R crosses the tooth axis, and its angle to the square of that axis. */
export function loadLine(rack: Rack, radius: number): { readonly height: number; readonly angle: number } {
  const step = 1e-5;
  const [x1, y1] = flankPoint(rack, radius - step);
  const [x2, y2] = flankPoint(rack, radius + step);
  const [x, y] = flankPoint(rack, radius);
  const slope = (x2 - x1) / (y2 - y1);
  // The normal leaves the flank towards the axis along (-1, slope), which climbs where the flank leans inward.
  return { height: y + x * slope, angle: Math.atan(-slope) };
}

export interface RootPoint {
  /** Thickness of the tooth there. */
  readonly chord: number;
  readonly height: number;
  readonly radius: number;
}

function rootPoint(rack: Rack, s: number): RootPoint {
  const step = 1e-4;
  const [x1, y1] = filletPoint(rack, s - step);
  const [x, y] = filletPoint(rack, s);
  const [x2, y2] = filletPoint(rack, s + step);
  const dx = (x2 - x1) / (2 * step);
  const dy = (y2 - y1) / (2 * step);
  const ddx = (x2 - 2 * x + x1) / step ** 2;
  const ddy = (y2 - 2 * y + y1) / step ** 2;
  return { chord: 2 * x, height: y, radius: Math.abs(Math.hypot(dx, dy) ** 3 / (dx * ddy - dy * ddx)) };
}

/** The point of the fillet whose tangent makes 30° with the tooth axis. */
export function thirtyDegreePoint(rack: Rack): RootPoint {
  const [bottom, flank] = filletEnds(rack);
  const step = 1e-5;
  const lean = (s: number) => {
    const [x1, y1] = filletPoint(rack, s - step);
    const [x2, y2] = filletPoint(rack, s + step);
    return Math.atan2(Math.abs(x2 - x1), Math.abs(y2 - y1)) - Math.PI / 6;
  };
  const s = bracketedRoot(lean, flank, bottom, 1e-10);
  if (s === null) throw new Error('The fillet has no 30° tangent.');
  return rootPoint(rack, s);
}

/** The point where the parabola of uniform strength, with its vertex at `height` on the axis, touches the fillet. */
export function parabolaPoint(rack: Rack, height: number): RootPoint {
  const [bottom, flank] = filletEnds(rack);
  let best = rootPoint(rack, flank);
  const steps = 4000;
  for (let i = 0; i < steps; i++) {
    const point = rootPoint(rack, flank + ((bottom - flank) * i) / steps);
    if (point.chord ** 2 / (height - point.height) < best.chord ** 2 / (height - best.height)) best = point;
  }
  return best;
}
