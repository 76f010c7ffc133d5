/**
 * A ring's tooth drawn point by point: an involute flank, and a round fillet that touches it and the root circle. An
 * independent description with no formula of the library's root form in it. Lengths over the module; the tooth's axis along
 * x, pointing away from the centre of the ring.
 */
import { involute } from '@/lib/calc/numeric/involute';
import { bracketedRoot } from '@/lib/calc/numeric/root';

export interface RingTooth {
  readonly z: number;
  readonly x: number;
  readonly alpha: number;
  readonly fillet: number;
}

type Point = readonly [x: number, y: number];

/** Chord, arm, load angle and form factor of the real ring's tooth, loaded at its tip. */
export function ringTooth({ z, x, alpha, fillet }: RingTooth) {
  const r = z / 2;
  const base = r * Math.cos(alpha);
  const tip = r - 1 + x;
  const root = r + 1.25 + x;
  const half = (R: number) =>
    (Math.PI / 2 - 2 * x * Math.tan(alpha)) / z - involute(alpha) + involute(Math.acos(base / R));
  const flank = (R: number): Point => [R * Math.cos(half(R)), R * Math.sin(half(R))];
  const nearest = ([px, py]: Point) => {
    let best = Number.POSITIVE_INFINITY;
    for (let i = 0; i <= 2000; i++) {
      const [fx, fy] = flank(tip + ((root - tip) * i) / 2000);
      best = Math.min(best, Math.hypot(fx - px, fy - py));
    }
    return best;
  };
  const centre = (phi: number): Point => [(root - fillet) * Math.cos(phi), (root - fillet) * Math.sin(phi)];
  const from = half(root - fillet);
  const phi = bracketedRoot((p) => nearest(centre(p)) - fillet, from, from + (3 * fillet) / r, 1e-9);
  if (phi === null) throw new Error('The fillet does not fit.');
  const [cx, cy] = centre(phi);
  // The point of the fillet whose tangent makes 30° with the tooth's axis.
  const [rootX, rootY] = [cx + fillet * Math.sin(Math.PI / 6), cy - fillet * Math.cos(Math.PI / 6)];
  const step = 1e-6;
  const [tx, ty] = flank(tip);
  const [ux, uy] = flank(tip + step);
  const slope = (uy - ty) / (ux - tx);
  // The square to the flank at the tip's corner crosses the axis here.
  const load = tx + ty * slope;
  const angle = Math.atan(slope);
  const s_Fn = 2 * rootY;
  const h_Fa = rootX - load;
  return { s_Fn, h_Fa, angle, Y_Fa: (6 * h_Fa * Math.cos(angle)) / (s_Fn ** 2 * Math.cos(alpha)) };
}
