/** Toothed belts against the shape they take round two circles, point by point, and against the balance of their forces. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as shape from '@/lib/calc/gears/belt/geometry';
import * as forces from '@/lib/calc/gears/belt/tension';
import { many, range, relative } from '../draws';

interface Point {
  readonly x: number;
  readonly y: number;
  readonly small: boolean;
}

/** The tightest closed line round both circles: the hull of their points (monotone chain). */
function hull(d_1: number, d_2: number, a: number, points = 4000): Point[] {
  const circle = (r: number, x: number, small: boolean) =>
    Array.from({ length: points }, (_, i) => ({
      x: x + r * Math.cos((2 * Math.PI * i) / points),
      y: r * Math.sin((2 * Math.PI * i) / points),
      small,
    }));
  const all = [...circle(d_1 / 2, a, true), ...circle(d_2 / 2, 0, false)].sort(
    (p, q) => p.x - q.x || p.y - q.y,
  );
  const half = (from: readonly Point[]) => {
    const line: Point[] = [];
    for (const p of from) {
      for (;;) {
        const [o, q] = [line.at(-2), line.at(-1)];
        if (!o || !q || (q.x - o.x) * (p.y - o.y) - (q.y - o.y) * (p.x - o.x) > 0) break;
        line.pop();
      }
      line.push(p);
    }
    return line.slice(0, -1);
  };
  return [...half(all), ...half([...all].reverse())];
}

const pulleys = [
  [20, 60, 5e-3, 0.14],
  [16, 72, 3e-3, 0.08],
  [24, 24, 5e-3, 0.2],
] as const;

function stage(z_1: number, z_2: number, p_b: number, a: number) {
  const d_1 = shape.pulleyPitchDiameter.of({ z: z_1, p_b });
  const d_2 = shape.pulleyPitchDiameter.of({ z: z_2, p_b });
  const gamma = shape.strandAngle.of({ d_1, d_2, a });
  return { z_1, z_2, p_b, a, d_1, d_2, gamma, L_b: shape.beltLength.of({ a, gamma, d_1, d_2 }) };
}

describe('the length of a belt', () => {
  // Independent derivation: a polygon of some thousand corners stretched round both pitch circles.
  it.each(pulleys)('is that of the line stretched round its pulleys: %i and %i teeth', (z_1, z_2, p_b, a) => {
    const belt = stage(z_1, z_2, p_b, a);
    const corners = hull(belt.d_1, belt.d_2, a);
    const length = corners.reduce((sum, p, i) => {
      const next = corners[(i + 1) % corners.length] ?? p;
      return sum + Math.hypot(next.x - p.x, next.y - p.y);
    }, 0);
    expect(relative(length, belt.L_b)).toBeLessThan(1e-6);
  });

  it.each(pulleys)(
    'leaves the smaller pulley the teeth that the line touches: %i and %i',
    (z_1, z_2, p_b, a) => {
      const belt = stage(z_1, z_2, p_b, a);
      const touching = hull(belt.d_1, belt.d_2, a).filter((p) => p.small).length;
      const beta_1 = shape.smallPulleyWrap.of(belt);
      expect(Math.abs((2 * Math.PI * touching) / 4000 - beta_1)).toBeLessThan(0.004);
      const z_e = shape.teethInMesh.of({ z_1, beta_1 });
      expect(z_e).toBe(Math.floor((z_1 * beta_1) / (2 * Math.PI)));
      expect(z_e).toBeGreaterThanOrEqual(6);
    },
  );

  it('gives back the centre distance', () => {
    fc.assert(
      fc.property(range(10, 40), range(40, 120), range(0.02, 0.5), (z_1, z_2, free) => {
        const p_b = 5e-3;
        const a = ((z_1 + z_2) * p_b) / (2 * Math.PI) + free;
        const belt = stage(z_1, z_2, p_b, a);
        expect(relative(shape.beltCentreDistance.of(belt), a)).toBeLessThan(1e-10);
      }),
      many,
    );
  });

  it('is whole in pitches for two equal pulleys as far apart as whole pitches, and too short gives no number', () => {
    const belt = stage(24, 24, 5e-3, 0.1);
    expect(shape.beltTeeth.of(belt)).toBeCloseTo(24 + 40, 9);
    expect(shape.beltCentreDistance.of({ d_1: 0.02, d_2: 0.1, L_b: 0.25 })).toBeNaN();
  });

  it('turns 3:1 over 20 and 60 teeth', () => {
    expect(shape.beltRatio.of({ z_2: 60, z_1: 20 })).toBe(3);
  });
});

describe('the teeth in mesh', () => {
  // ISO 5295:1987 (from memory): 1 from six teeth, 0.2 less for each missing one.
  it.each([
    [12, 1],
    [6, 1],
    [5, 0.8],
    [3, 0.4],
  ])('%i of them count with a factor of %d', (z_e, factor) => {
    expect(shape.teethInMeshFactor.of({ z_e })).toBeCloseTo(factor, 12);
  });

  it('share the effective tension', () => {
    const F_u = forces.effectiveTension.of({ T: 1.2, d: 0.03 });
    expect(forces.beltToothForce.of({ F_u, z_e: 8 })).toBeCloseTo(10, 9);
  });
});

describe('the strands of a belt', () => {
  // Independent derivation: both tensions as vectors along the tangents, and their moment about the shaft.
  it('pull on the shaft with the sum of their directions and turn it with their difference', () => {
    fc.assert(
      fc.property(range(0, 0.6), range(50, 200), range(1, 90), (gamma, F_v, F_u) => {
        const d = 0.03;
        const F_1 = forces.tightStrand.of({ F_v, F_u });
        const F_2 = forces.slackStrand.of({ F_v, F_u });
        const along = (F_1 + F_2) * Math.cos(gamma);
        const across = (F_1 - F_2) * Math.sin(gamma);
        const load = forces.beltShaftLoad.of({ F_1, F_2, beta_w: shape.smallPulleyWrap.of({ gamma }) });
        expect(relative(load, Math.hypot(along, across))).toBeLessThan(1e-9);
        const T = ((F_1 - F_2) * d) / 2;
        expect(relative(forces.effectiveTension.of({ T, d }), F_u)).toBeLessThan(1e-9);
      }),
      many,
    );
  });

  it('go slack when half the effective tension exceeds what was set', () => {
    expect(forces.slackStrand.of({ F_v: 20, F_u: 41 })).toBeLessThan(0);
  });

  // Independent derivation: Rayleigh's quotient with a parabola, which bounds the frequency from above by under one per cent.
  it('sound just below what Rayleigh’s quotient of a parabola allows', () => {
    const g = { F_v: 60, q_b: 0.02, l_s: 0.13 };
    const bound = Math.sqrt((10 * g.F_v) / g.q_b) / g.l_s / (2 * Math.PI);
    const f = forces.strandFrequency.of(g);
    expect(f).toBeLessThan(bound);
    expect(f).toBeGreaterThan(0.99 * bound);
  });

  // Independent derivation: turn the pulley, stretch one strand, slacken the other, take the moment.
  it('resist turning with both their stretches', () => {
    const g = { c_sp: 80e3, d: 0.06, l_s: forces.strandLength.of({ a: 0.14, gamma: 0.2 }) };
    const angle = 1e-3;
    const change = (g.c_sp * (angle * g.d)) / 2 / (0.14 * Math.cos(0.2));
    expect(relative(forces.beltTorsionalStiffness.of(g) * angle, change * g.d)).toBeLessThan(1e-12);
  });

  it('carry the weight of their own turning: 20 g/m at 10 m/s asks for 2 N', () => {
    expect(forces.centrifugalTension.of({ q_b: 0.02, v: 10 })).toBeCloseTo(2, 12);
  });
});
