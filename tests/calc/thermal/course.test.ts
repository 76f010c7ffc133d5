/** The two-lump motor against a stepper of the test's own, in rest, load, hold and runaway. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  cold,
  type HeatLoad,
  heatCourse,
  risesAfter,
  type TwoNodes,
  timeToLimit,
} from '@/lib/calc/thermal/course';
import {
  riseAt,
  riseAtWarm,
  runawayShare,
  steadyRise,
  steadyRiseWarm,
  timeConstant,
  timeToRise,
  timeToRiseWarm,
} from '@/lib/calc/thermal/one-node';
import {
  caseRise,
  fastRate,
  slowRate,
  windingRise,
  windingRiseAt,
  windingRiseWarm,
} from '@/lib/calc/thermal/two-node';

const motor: TwoNodes = { windingToCase: 0.5, caseToAmbient: 2, windingCapacity: 35, caseCapacity: 190 };
const growth = 0.00393 / (1 + 0.00393 * 5);

/** Runge–Kutta of fourth order on the two heat balances, written out anew: winding and case rise, K. */
function stepped(n: TwoNodes, load: HeatLoad, from: readonly [number, number], time: number, steps: number) {
  const slope = ([w, h]: readonly [number, number]): readonly [number, number] => {
    const through = (w - h) / n.windingToCase;
    const copper = load.copperLoss * (1 + load.growth * w);
    return [
      (copper - through) / n.windingCapacity,
      (through + load.caseLoss - h / n.caseToAmbient) / n.caseCapacity,
    ];
  };
  const along = (x: readonly [number, number], k: readonly [number, number], d: number) =>
    [x[0] + k[0] * d, x[1] + k[1] * d] as const;
  let x = from;
  const dt = time / steps;
  for (let i = 0; i < steps; i += 1) {
    const k1 = slope(x);
    const k2 = slope(along(x, k1, dt / 2));
    const k3 = slope(along(x, k2, dt / 2));
    const k4 = slope(along(x, k3, dt));
    x = [
      x[0] + (dt / 6) * (k1[0] + 2 * k2[0] + 2 * k3[0] + k4[0]),
      x[1] + (dt / 6) * (k1[1] + 2 * k2[1] + 2 * k3[1] + k4[1]),
    ];
  }
  return x;
}

describe('two warm lumps', () => {
  it('follows the stepper for any motor, load, start and time, below and beyond runaway (seed 4711)', () => {
    const range = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        range(0.1, 3),
        range(0.3, 8),
        range(5, 100),
        range(20, 1000),
        range(0, 200),
        range(0, 0.0045),
        range(0, 40),
        range(0, 60),
        range(0, 60),
        range(1, 400),
        (r1, r2, c1, c2, copperLoss, alpha, caseLoss, w, h, time) => {
          const nodes = { windingToCase: r1, caseToAmbient: r2, windingCapacity: c1, caseCapacity: c2 };
          const load = { copperLoss, growth: alpha, caseLoss };
          const [winding, body] = stepped(nodes, load, [w, h], time, 4000);
          const closed = risesAfter(nodes, load, { winding: w, case: h }, time);
          expect(Math.abs(closed.winding - winding)).toBeLessThan(1e-6 * (1 + Math.abs(winding)));
          expect(Math.abs(closed.case - body)).toBeLessThan(1e-6 * (1 + Math.abs(body)));
        },
      ),
      { seed: 4711, numRuns: 60 },
    );
  });

  it('passes exactly through the point where feedback and cooling balance', () => {
    const load = { copperLoss: 1 / (growth * 2.5), growth, caseLoss: 0 };
    const [winding] = stepped(motor, load, [0, 0], 300, 6000);
    expect(risesAfter(motor, load, cold, 300).winding).toBeCloseTo(winding, 5);
  });

  it('settles where the steady formula says, and agrees with the rates of the constant-loss formula', () => {
    const warm = { copperLoss: 20, growth, caseLoss: 4 };
    const steady = windingRiseWarm.of({ P_0: 20, R_wc: 0.5, R_ca: 2, alpha: growth, P_c: 4 });
    expect(risesAfter(motor, warm, cold, 1e5).winding).toBeCloseTo(steady, 6);
    const g = { R_wc: 0.5, C_w: 35, R_ca: 2, C_c: 190 };
    const r_slow = slowRate.of(g);
    const r_fast = fastRate.of(g);
    expect(r_slow).toBeLessThan(r_fast);
    expect(windingRiseAt.of({ ...g, P: 20, r_slow, r_fast, t: 90 })).toBeCloseTo(
      risesAfter(motor, { copperLoss: 20, growth: 0, caseLoss: 0 }, cold, 90).winding,
      9,
    );
  });

  it('gives the same state after one long phase as after many short ones', () => {
    const load = { copperLoss: 60, growth, caseLoss: 5 };
    const once = heatCourse(motor, [{ load, duration: 60 }], 1).at(-1);
    const often = heatCourse(
      motor,
      Array.from({ length: 12 }, () => ({ load, duration: 5 })),
      3,
    ).at(-1);
    expect(often?.winding).toBeCloseTo(once?.winding ?? Number.NaN, 9);
    expect(often?.time).toBeCloseTo(60, 9);
  });

  it('reaches a limit at the time it says, and says so when it never does', () => {
    const load = { copperLoss: 80, growth, caseLoss: 0 };
    const time = timeToLimit(motor, load, 100, 3600) ?? Number.NaN;
    expect(risesAfter(motor, load, cold, time).winding).toBeCloseTo(100, 3);
    expect(timeToLimit(motor, { ...load, copperLoss: 5 }, 100, 1e6)).toBeUndefined();
    expect(timeToLimit(motor, load, 100, 3600, { winding: 120, case: 20 })).toBe(0);
  });
});

describe('one warm lump', () => {
  const g = { P_0: 11.25, R_th: 6, alpha: 0.003854, C_th: 25 };

  it('follows a stepper of small steps with warm copper', () => {
    let rise = 0;
    const dt = 1e-3;
    const slope = (x: number) => (g.P_0 * (1 + g.alpha * x) - x / g.R_th) / g.C_th;
    for (let i = 0; i < 150_000; i += 1) rise += dt * slope(rise + (dt / 2) * slope(rise));
    expect(riseAtWarm.of({ ...g, t: 150 })).toBeCloseTo(rise, 6);
  });

  it('comes back from rise to time, and settles where the steady formula says', () => {
    const dtheta = riseAtWarm.of({ ...g, t: 40 });
    expect(timeToRiseWarm.of({ ...g, dtheta })).toBeCloseTo(40, 9);
    expect(riseAtWarm.of({ ...g, t: 1e5 })).toBeCloseTo(steadyRiseWarm.of(g), 6);
  });

  it('has made 63.2 % of its steady rise after one time constant, and is timed to the same moment', () => {
    const t = timeConstant.of(g);
    const dtheta = riseAt.of({ P: 10, R_th: 6, C_th: 25, t });
    expect(dtheta / steadyRise.of({ P: 10, R_th: 6 })).toBeCloseTo(1 - 1 / Math.E, 12);
    expect(timeToRise.of({ P: 10, R_th: 6, C_th: 25, dtheta })).toBeCloseTo(t, 9);
    expect(timeToRise.of({ P: 10, R_th: 6, C_th: 25, dtheta: 61 })).toBeNaN();
  });

  it('settles below a feedback of 1 and runs away above it (independent: the stepper)', () => {
    const nodes = { ...motor, windingToCase: 0.5, caseToAmbient: 5.5 };
    for (const [copperLoss, settles] of [
      [40, true],
      [48, false],
    ] as const) {
      const share = runawayShare.of({ alpha: growth, P_0: copperLoss, R_th: 6 });
      expect(share < 1).toBe(settles);
      const load = { copperLoss, growth, caseLoss: 0 };
      const at = (time: number) => stepped(nodes, load, [0, 0], time, 20_000)[0];
      const late = [20_000, 40_000, 60_000].map(at);
      const [a = 0, b = 0, c = 0] = late;
      expect(c - b < b - a).toBe(settles);
    }
  });

  it('splits the steady rise between winding and case', () => {
    const w = windingRise.of({ P: 20, R_wc: 0.5, R_ca: 2 });
    const state = risesAfter(motor, { copperLoss: 20, growth: 0, caseLoss: 0 }, cold, 1e5);
    expect(state.winding).toBeCloseTo(w, 8);
    expect(state.case).toBeCloseTo(caseRise.of({ P: 20, R_ca: 2 }), 8);
  });
});
