/**
 * Pinion and ring as point-by-point outlines in the transverse section, found without the line of action: what the
 * closed forms of contact and interference are held against. Lengths in the unit of the pair's.
 */
import { involute } from '@/lib/calc/numeric/involute';
import type { InternalPair } from '../../../reference/gears/internal-pair';

const angleAt = (baseRadius: number, radius: number) => Math.acos(Math.min(1, baseRadius / radius));

/** Half the angle of a pinion tooth at a radius; below the base circle the flank is taken as radial. */
export function pinionHalfAngle(pair: InternalPair, radius: number): number {
  const alpha = angleAt(pair.d_b1 / 2, radius);
  return pair.s_t1 / pair.d_1 + involute(pair.alpha_t) - involute(alpha);
}

/** Half the angle of a tooth space of the ring at a radius. */
export function spaceHalfAngle(pair: InternalPair, radius: number): number {
  const space = Math.PI / pair.z_2 - pair.s_t2 / pair.d_2;
  return space + involute(pair.alpha_t) - involute(angleAt(pair.d_b2 / 2, radius));
}

/** Where a point of the pinion stands about the ring's axis: polar angle given in the pinion, its centre at `a` on the axis. */
export function aboutRing(a: number, radius: number, angle: number): { r: number; angle: number } {
  const x = a + radius * Math.cos(angle);
  const y = radius * Math.sin(angle);
  return { r: Math.hypot(x, y), angle: Math.atan2(y, x) };
}

/**
 * How deep (in length along the arc) the upper half of the pinion's outline stands inside the ring's teeth at worst, over a pitch of
 * rotation. `moves` are displacements of the pinion towards the ring's axis, 0 for running in place.
 */
export function deepestFouling(pair: InternalPair, moves: readonly number[], phases = 24): number {
  const r_a1 = pair.d_a1 / 2;
  const r_a2 = pair.d_a2 / 2;
  const r_f2 = pair.d_f2 / 2;
  // The upper half of the teeth only: how the ring's tip fares at the pinion's foot is another question (deepestRingTip).
  const from = pair.d_1 / 2;
  const radii = Array.from({ length: 25 }, (_, i) => from + ((r_a1 - from) * i) / 24);
  let deepest = Number.NEGATIVE_INFINITY;
  for (let phase = 0; phase < phases; phase++) {
    for (let tooth = 0; tooth < pair.z_1; tooth++) {
      const phi_1 = (2 * Math.PI * (tooth + phase / phases)) / pair.z_1;
      for (const radius of radii) {
        const half = pinionHalfAngle(pair, radius);
        for (const flank of [phi_1 - half, phi_1 + half]) {
          for (const move of moves) {
            const at = aboutRing(pair.a - move, radius, flank);
            if (at.r < r_a2 || at.r > r_f2) continue;
            // The nearest space of the ring; it stands where the pinion's tooth stands when both roll together.
            const pitch = (2 * Math.PI) / pair.z_2;
            const turned = (phase / phases) * pitch;
            const off = at.angle - turned;
            const inSpace = off - Math.round(off / pitch) * pitch;
            deepest = Math.max(deepest, (Math.abs(inSpace) - spaceHalfAngle(pair, at.r)) * at.r);
          }
        }
      }
    }
  }
  return deepest;
}

/** How deep the ring's tip corners stand inside the pinion's teeth, at most, as the pair runs. */
export function deepestRingTip(pair: InternalPair, phases = 400): number {
  const r_a2 = pair.d_a2 / 2;
  const corner = spaceHalfAngle(pair, r_a2);
  let deepest = Number.NEGATIVE_INFINITY;
  for (let phase = 0; phase < phases; phase++) {
    for (let space = -4; space <= 4; space++) {
      const phi_2 = (2 * Math.PI * (space + phase / phases)) / pair.z_2;
      const phi_1 = (phi_2 * pair.z_2) / pair.z_1;
      const x = r_a2 * Math.cos(phi_2 + corner) - pair.a;
      const y = r_a2 * Math.sin(phi_2 + corner);
      const r = Math.hypot(x, y);
      if (r < pair.d_b1 / 2 || r > pair.d_a1 / 2) continue;
      const off = Math.atan2(y, x) - phi_1;
      const pitch = (2 * Math.PI) / pair.z_1;
      const onTooth = off - Math.round(off / pitch) * pitch;
      // The corner lies on the upper side of its space; it fouls when it stands inside the tooth's upper flank.
      deepest = Math.max(deepest, (pinionHalfAngle(pair, r) - Math.abs(onTooth)) * r);
    }
  }
  return deepest;
}
