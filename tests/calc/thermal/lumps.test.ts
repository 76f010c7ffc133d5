/** The motor as three warm lumps: against the closed form of two, against scipy's solver, and its periodic state. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { continuousHold, continuousMoving } from '@/lib/calc/thermal/continuous';
import { risesAfter } from '@/lib/calc/thermal/course';
import {
  after,
  applied,
  coldLumps,
  courseOf,
  halvedCourses,
  type LumpLoad,
  periodicRises,
  timeToRises,
} from '@/lib/calc/thermal/lumps';
import { magnetRise } from '@/lib/calc/thermal/magnets';
import { toAmbient } from '@/lib/calc/thermal/mount';
import { motorHeat } from '../../reference/independent/heat/heat';

const range = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyNodes = fc.record({
  windingToCase: range(0.1, 3),
  caseToAmbient: range(0.3, 8),
  windingCapacity: range(5, 100),
  caseCapacity: range(20, 1000),
});
const nodes = { windingToCase: 0.5, caseToAmbient: 2, windingCapacity: 35, caseCapacity: 190 };
const growth = 0.00393 / (1 + 0.00393 * 5);
const turning = (copperLoss: number): LumpLoad => ({
  copperLoss,
  growth,
  share: 1,
  ironLoss: 0,
  caseLoss: 0,
});
const seed = 90125;

describe('three warm lumps', () => {
  it('are two where every phase carries the same: the closed form gives the same rises (seed 90125)', () => {
    fc.assert(
      fc.property(
        anyNodes,
        range(0, 150),
        range(0, 0.0045),
        range(0, 40),
        range(0, 60),
        range(0, 60),
        range(0.1, 600),
        (n, copperLoss, alpha, caseLoss, winding, shell, time) => {
          const load = { copperLoss, growth: alpha, share: 1, ironLoss: 0, caseLoss };
          const start = { worst: winding, others: winding, case: shell };
          const own = applied(courseOf(n, load, time), start);
          const closed = risesAfter(n, load, { winding, case: shell }, time);
          const near = (a: number, b: number) =>
            expect(Math.abs(a - b)).toBeLessThan(1e-8 * (1 + Math.abs(b)));
          near(own.worst, closed.winding);
          near(own.others, closed.winding);
          near(own.case, closed.case);
        },
      ),
      { seed, numRuns: 200 },
    );
  });

  it.each(motorHeat.map((m) => [m.title, m] as const))('%s: agrees with scipy’s solver', (_, { work }) => {
    const rows = Object.entries(work());
    expect(rows.length).toBeGreaterThan(2);
    for (const [name, { own, other, tolerance }] of rows)
      expect(Math.abs(own - other), name).toBeLessThanOrEqual(tolerance * Math.abs(other));
  });

  it('come to the same state after one long course as after many short ones', () => {
    const load = { ...turning(40), share: 2 };
    let x = coldLumps;
    for (let i = 0; i < 50; i += 1) x = applied(courseOf(nodes, load, 3), x);
    expect(applied(courseOf(nodes, load, 150), coldLumps).worst).toBeCloseTo(x.worst, 9);
  });

  it('keep heat: what goes in is stored or given off (independent)', () => {
    const load = { copperLoss: 30, growth: 0, share: 2, ironLoss: 4, caseLoss: 3 };
    const time = 40;
    const steps = 4000;
    const step = courseOf(nodes, load, time / steps);
    let x = coldLumps;
    let out = 0;
    for (let i = 0; i < steps; i += 1) {
      const next = applied(step, x);
      out += ((x.case + next.case) / 2 / nodes.caseToAmbient) * (time / steps);
      x = next;
    }
    const stored = (nodes.windingCapacity / 3) * (x.worst + 2 * x.others) + nodes.caseCapacity * x.case;
    expect(stored + out).toBeCloseTo(37 * time, 4);
  });
});

describe('a duty that repeats', () => {
  const cycle = (copperLoss: number) =>
    after(courseOf(nodes, { ...turning(copperLoss), share: 2 }, 5), courseOf(nodes, turning(0), 10));

  it('comes back to the state that its periodic rises say, and reaches it from cold', () => {
    const course = cycle(60);
    const start = periodicRises(course) ?? coldLumps;
    expect(start.worst).toBeGreaterThan(5);
    const back = applied(course, start);
    for (const key of ['worst', 'others', 'case'] as const) expect(back[key]).toBeCloseTo(start[key], 8);
    let x = coldLumps;
    for (let i = 0; i < 2000; i += 1) x = applied(course, x);
    expect(x.worst).toBeCloseTo(start.worst, 7);
  });

  it('has none where it runs away, and grows from round to round just there', () => {
    for (const loss of [60, 120, 200, 320, 500]) {
      const course = cycle(loss);
      let x = coldLumps;
      let before = 0;
      let grew = 0;
      for (let i = 0; i < 3000; i += 1) {
        x = applied(course, x);
        grew = x.case - before;
        before = x.case;
      }
      const settles = Math.abs(grew) < 1e-6 * (1 + x.case);
      expect(periodicRises(course) !== null, `${loss} W`).toBe(settles);
    }
  });
});

describe('the time to a rise', () => {
  it('is the moment at which the worst phase has risen so far', () => {
    fc.assert(
      fc.property(anyNodes, range(20, 300), range(5, 120), (n, loss, limit) => {
        const load = { ...turning(loss), share: 2 };
        const time = timeToRises(halvedCourses(n, load, 86_400), limit, 86_400);
        if (time === null) {
          expect(applied(courseOf(n, load, 86_400), coldLumps).worst).toBeLessThan(limit);
          return;
        }
        expect(Math.abs(applied(courseOf(n, load, time), coldLumps).worst - limit)).toBeLessThan(0.02);
      }),
      { seed, numRuns: 100 },
    );
  });

  it('is none from a state that is there already', () => {
    const halved = halvedCourses(nodes, turning(1), 100);
    expect(timeToRises(halved, 50, 100, { worst: 60, others: 40, case: 30 })).toBe(0);
  });
});

describe('what the motor stands without end', () => {
  it('just reaches the limit when it is left there for long, at rest and in motion (independent: the lumps)', () => {
    const R_hot = 0.12;
    const given = { dtheta: 98, R_hot, R_wc: 0.5, R_ca: 2 };
    const constant = (share: number, I: number, ironLoss: number, caseLoss: number) =>
      applied(
        courseOf(nodes, { copperLoss: R_hot * I ** 2, growth: 0, share, ironLoss, caseLoss }, 1e5),
        coldLumps,
      ).worst;
    expect(constant(2, continuousHold.of(given), 0, 0)).toBeCloseTo(98, 8);
    expect(constant(1, continuousMoving.of({ ...given, P_fe: 5, P_f: 3 }), 5, 3)).toBeCloseTo(98, 8);
    expect(continuousMoving.of({ ...given, P_fe: 50, P_f: 3 })).toBe(0);
  });
});

describe('magnets', () => {
  const given = { P_0: 12, P_c: 3, R_wc: 0.55, R_ca: 1.6, alpha: growth, theta_amb: 295, theta_ref: 293.15 };

  it('that do not weaken are as warm as the steady case with warm copper', () => {
    const rise = magnetRise.of({ ...given, alpha_B: 0 });
    const load = { ...turning(12), caseLoss: 3 };
    const steady = applied(
      courseOf({ ...nodes, windingToCase: 0.55, caseToAmbient: 1.6 }, load, 1e5),
      coldLumps,
    );
    expect(rise).toBeCloseTo(steady.case, 8);
  });

  it('get the warmer the more they weaken, until nothing settles', () => {
    const at = (alpha_B: number, P_0 = 12) => magnetRise.of({ ...given, alpha_B, P_0 });
    expect(at(-0.0005)).toBeLessThan(at(-0.0012));
    expect(at(-0.0012)).toBeLessThan(at(-0.002));
    expect(at(-0.0012, 200)).toBeNaN();
  });
});

describe('a mount', () => {
  it('takes heat off the case as a second way out, and none when it lets none through', () => {
    expect(toAmbient.of({ R_ca: 2, R_cm: 1, R_ma: 3 })).toBeCloseTo(8 / 6, 12);
    expect(toAmbient.of({ R_ca: 2, R_cm: 1, R_ma: 1e12 })).toBeCloseTo(2, 9);
  });
});
