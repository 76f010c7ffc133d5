/** Backlash against outlines turned until they touch, and sums over a train against their corners and against chance. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { thinningFromInfeed } from '@/lib/calc/gears/backlash/allowances';
import * as mesh from '@/lib/calc/gears/backlash/mesh';
import * as train from '@/lib/calc/gears/backlash/train';
import { baseHelixAngle, transversePressureAngle } from '@/lib/calc/gears/geometry/angles';
import { pitchDiameter } from '@/lib/calc/gears/geometry/diameters';
import { workingAngleFromCentreDistance } from '@/lib/calc/gears/geometry/pair';
import { toothThickness } from '@/lib/calc/gears/geometry/thickness';
import { ringThicknessAt } from '@/lib/calc/gears/internal/diameters';
import { internalPitchDiameter } from '@/lib/calc/gears/internal/pair';
import { involute } from '@/lib/calc/numeric/involute';
import { workInternalPair } from '../../../reference/gears/internal-pair';
import { workPair } from '../../../reference/gears/pair';
import { degree, many, range, relative } from '../draws';
import { aboutRing, pinionHalfAngle, spaceHalfAngle } from '../internal/tooth-outlines';

const spur = { m_n: 1, alpha_n: 20 * degree, beta: 0, z_1: 20, z_2: 45, x_1: 0.2, x_2: -0.1 };

/** An external spur pair held at centre distance a, its play by the formulas. */
function play(a: number) {
  const pair = workPair(spur);
  const alpha_wt = workingAngleFromCentreDistance.of({ a_d: pair.a_d, alpha_t: pair.alpha_t, a });
  const d_w1 = pitchDiameter.of({ a, z: spur.z_1, z_mate: spur.z_2 });
  const d_w2 = pitchDiameter.of({ a, z: spur.z_2, z_mate: spur.z_1 });
  const thickness = (d: number, d_w: number, x: number) =>
    mesh.workingToothThickness.of({
      d_w,
      s_t: toothThickness.of({ ...spur, x }),
      d,
      alpha_t: pair.alpha_t,
      alpha_wt,
    });
  const s_wt1 = thickness(pair.one.d, d_w1, spur.x_1);
  const s_wt2 = thickness(pair.two.d, d_w2, spur.x_2);
  const j_wt = mesh.circumferentialBacklash.of({ d_w1, z_1: spur.z_1, s_wt1, s_wt2 });
  return { pair, alpha_wt, j_wt, phi_j2: mesh.angularBacklash.of({ j_wt, d_w: d_w2 }) };
}

/** How far the wheel turns between its flanks with a pinion tooth held in the middle of a space, point by point. */
function turned(a: number): number {
  const { pair } = play(a);
  const half = (gear: { d: number; d_b: number }, x: number, r: number) =>
    toothThickness.of({ ...spur, x }) / gear.d +
    involute(pair.alpha_t) -
    involute(Math.acos(Math.min(1, gear.d_b / 2 / r)));
  let least = Number.POSITIVE_INFINITY;
  const from = pair.one.d_b / 2;
  const steps = 20000;
  for (let i = 0; i <= steps; i++) {
    const r = from + ((pair.one.d_a / 2 - from) * i) / steps;
    const psi = half(pair.one, spur.x_1, r);
    const R = Math.hypot(a - r * Math.cos(psi), r * Math.sin(psi));
    if (R > pair.two.d_a / 2 || R < pair.two.d_b / 2) continue;
    const space = Math.PI / spur.z_2 - half(pair.two, spur.x_2, R);
    least = Math.min(least, space - Math.atan2(r * Math.sin(psi), a - r * Math.cos(psi)));
  }
  return 2 * least;
}

describe('the play of an external pair', () => {
  it('is nothing at the centre distance without backlash, and below zero closer in', () => {
    const { pair } = play(40);
    expect(play(pair.a).j_wt).toBeCloseTo(0, 9);
    expect(play(pair.a - 0.02).j_wt).toBeLessThan(0);
  });

  // Independent derivation: outlines of the teeth, the wheel turned until a point of the pinion's flank touches.
  it.each([0.02, 0.05, 0.1, 0.2])('is what the wheel turns between its flanks, %d modules out', (out) => {
    const a = workPair(spur).a + out;
    expect(relative(play(a).phi_j2, turned(a))).toBeLessThan(1e-4);
  });

  it('grows as twice the tangent of the pressure angle with the distance, to first order', () => {
    const { pair } = play(40);
    const Delta_a = 0.01;
    const linear = mesh.backlashByDistanceChange.of({ Delta_a, alpha_wt: pair.alpha_wt });
    expect(relative(play(pair.a + Delta_a).j_wt, linear)).toBeLessThan(0.02);
    const j_r = mesh.radialBacklash.of({ j_wt: linear, alpha_wt: pair.alpha_wt });
    expect(relative(j_r, Delta_a)).toBeLessThan(1e-12);
  });

  // Independent derivation: moving a rack's flank by depth times tangent, both flanks of the tooth.
  it('comes from thinner teeth as from deeper cutting', () => {
    const Delta_h = 0.05;
    const before = toothThickness.of({ ...spur, x: 0.2 });
    const after = toothThickness.of({ ...spur, x: 0.2 - Delta_h });
    expect(thinningFromInfeed.of({ Delta_h, alpha_n: spur.alpha_n })).toBeCloseTo(before - after, 12);
  });

  // Independent derivation: the square direction of a helical flank in space is cos α_n cos β along the circumference.
  it('square to a helical flank is the part of the circumferential play along that direction', () => {
    fc.assert(
      fc.property(range(0, 0.7), range(0.25, 0.44), (beta, alpha_n) => {
        const alpha_wt = transversePressureAngle.of({ alpha_n, beta });
        const j_bn = mesh.normalBacklash.of({
          j_wt: 1,
          alpha_wt,
          beta_b: baseHelixAngle.of({ alpha_n, beta }),
        });
        expect(relative(j_bn, Math.cos(alpha_n) * Math.cos(beta))).toBeLessThan(1e-12);
      }),
      many,
    );
  });

  it('of plastic gears in an aluminium case shrinks with warmth, and of one material at one warmth grows with size', () => {
    const g = { a: 0.05, alpha_wt: 20 * degree, z_1: 20, z_2: 60, dtheta_c: 20, dtheta_g: 40 };
    const change = mesh.thermalBacklash.of({ ...g, alpha_c: 23e-6, alpha_g1: 9e-5, alpha_g2: 9e-5 });
    // By hand: axes out by 23 µm, pitch radii by 180 µm, so 157 µm less room along the line of centres.
    expect(change).toBeCloseTo(-2 * 157e-6 * Math.tan(20 * degree), 9);
    expect(mesh.warmBacklash.of({ j_a: 1e-4, A_s: 2e-5, Delta_j_T: change })).toBeCloseTo(5.7e-6, 6);
    const alike = { ...g, dtheta_g: 20, alpha_c: 9e-5, alpha_g1: 9e-5, alpha_g2: 9e-5 };
    expect(mesh.thermalBacklash.of(alike)).toBeCloseTo(0, 15);
  });
});

describe('the play of an internal pair', () => {
  // Independent derivation: outlines again; inside a ring play grows as the axes come together.
  it.each([0.03, 0.1])('is what the ring turns between its flanks, %d modules closer in', (closer) => {
    const pair = workInternalPair({
      m_n: 1,
      alpha_n: 20 * degree,
      beta: 0,
      z_1: 24,
      z_2: 72,
      x_1: 0.3,
      x_2: 0.5,
    });
    const a = pair.a - closer;
    const alpha_wt = workingAngleFromCentreDistance.of({ ...pair, a });
    const d_w1 = internalPitchDiameter.of({ ...pair, a, z: pair.z_1 });
    const d_w2 = internalPitchDiameter.of({ ...pair, a, z: pair.z_2 });
    const s_wt1 = mesh.workingToothThickness.of({
      ...pair,
      d_w: d_w1,
      s_t: pair.s_t1,
      d: pair.d_1,
      alpha_wt,
    });
    const s_wt2 = ringThicknessAt.of({ ...pair, d_y: d_w2, alpha_yt: alpha_wt });
    const j_wt = mesh.circumferentialBacklash.of({ d_w1, z_1: pair.z_1, s_wt1, s_wt2 });
    let least = Number.POSITIVE_INFINITY;
    const from = pair.d_b1 / 2;
    for (let i = 0; i <= 20000; i++) {
      const r = from + ((pair.d_a1 / 2 - from) * i) / 20000;
      const at = aboutRing(a, r, pinionHalfAngle(pair, r));
      if (at.r < pair.d_a2 / 2) continue;
      least = Math.min(least, spaceHalfAngle(pair, at.r) - at.angle);
    }
    expect(j_wt).toBeGreaterThan(0);
    const held = mesh.internalBacklashFromCentreDistance.of({ a, alpha_w0: pair.alpha_wt, alpha_wt });
    expect(relative(held, j_wt)).toBeLessThan(1e-9);
    expect(relative(mesh.angularBacklash.of({ j_wt, d_w: d_w2 }), 2 * least)).toBeLessThan(1e-4);
  });
});

describe('the play of a train at its output', () => {
  /** Four meshes: ratio between their wheel and the output, least and largest play at that wheel. */
  const meshes = [
    { i_after: 27, phi_min: 0.002, phi_max: 0.006 },
    { i_after: 9, phi_min: 0.002, phi_max: 0.005 },
    { i_after: 3, phi_min: 0.001, phi_max: 0.004 },
    { i_after: 1, phi_min: 0.001, phi_max: 0.003 },
  ];
  const atOutput = meshes.map((m) => {
    const phi_min = train.angleAtOutput.of({ phi_m: m.phi_min, i_after: m.i_after });
    const phi_max = train.angleAtOutput.of({ phi_m: m.phi_max, i_after: m.i_after });
    return {
      phi_min,
      phi_max,
      phi_mid: train.backlashMean.of({ phi_min, phi_max }),
      t_phi: train.backlashHalfWidth.of({ phi_min, phi_max }),
    };
  });
  const worst = atOutput.reduce(
    (phi_before, m) => train.backlashWorstSum.of({ phi_before, phi_out: m.phi_max }),
    0,
  );
  const phi_mid = atOutput.reduce(
    (phi_before, m) => train.backlashWorstSum.of({ phi_before, phi_out: m.phi_mid }),
    0,
  );
  const t_sum = atOutput.reduce(
    (t_before, m) => train.backlashScatterSum.of({ t_before, t_phi: m.t_phi }),
    0,
  );
  const likely = train.backlashLikely.of({ phi_mid, t_sum });

  it('is at worst the largest of all corners of the tolerances', () => {
    let largest = 0;
    for (let corner = 0; corner < 2 ** meshes.length; corner++) {
      const sum = meshes.reduce(
        (total, m, k) => total + ((corner >> k) & 1 ? m.phi_max : m.phi_min) / m.i_after,
        0,
      );
      largest = Math.max(largest, sum);
    }
    expect(relative(worst, largest)).toBeLessThan(1e-12);
    expect(likely).toBeLessThan(worst);
  });

  it('lies at the last mesh for the most part: the first, behind 27:1, gives less than a tenth of it', () => {
    const share = atOutput.map((m) => m.phi_max / worst);
    expect(share[3]).toBeGreaterThan(0.5);
    expect(share[0]).toBeLessThan(0.06);
  });

  // Independent derivation: play drawn evenly in each tolerance, 40 000 trains from a fixed seed.
  it('stays below the statistical figure in more than 95 of 100 trains', () => {
    let state = 12345;
    const next = () => {
      state = (Math.imul(state, 1103515245) + 12345) & 0x7fffffff;
      return state / 0x7fffffff;
    };
    const trains = 40000;
    let below = 0;
    let squares = 0;
    for (let n = 0; n < trains; n++) {
      const sum = meshes.reduce(
        (total, m) => total + (m.phi_min + (m.phi_max - m.phi_min) * next()) / m.i_after,
        0,
      );
      if (sum <= likely) below++;
      squares += (sum - phi_mid) ** 2;
    }
    expect(below / trains).toBeGreaterThan(0.95);
    // An even draw has a standard deviation of the half width over the root of three; so has the sum of its own.
    expect(relative(Math.sqrt(squares / trains), t_sum / Math.sqrt(3))).toBeLessThan(0.02);
  });
});
