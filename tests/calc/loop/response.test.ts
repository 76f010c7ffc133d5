// Margins and gains read off frequency responses, against closed forms; the response of two masses against a simulation in time.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { controllerResponse, plantResponse, plantSweep, resonances } from '@/lib/calc/loop/linear';
import { greatestGain, marginsOf, rational, sweep, through } from '@/lib/calc/loop/response';
import type { DriveKind } from '@/lib/calc/loop/simulation/types';
import { suggestedGains } from '@/lib/calc/loop/suggest';
import { stepTrial } from '@/lib/calc/loop/trial';
import { plainController, plainLinear, plainPlant } from './loop-on-paper';

const quarter = Math.PI / 4;

describe('an open loop', () => {
  it('of K/(s(s+1)(s+2)) is stable below K = 6, by the criterion of Routh', () => {
    const swept = sweep(rational([1], [1, 3, 2, 0]), 1e-3, 1e3);
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 60, noNaN: true }), (K) => {
        fc.pre(Math.abs(K - 6) > 0.02);
        const m = marginsOf(swept, K);
        expect(m.stable).toBe(K < 6);
        expect(m.gainMargin).toBeCloseTo(6 / K, 3);
      }),
      { numRuns: 200, seed: 7 },
    );
  });

  it('that is stable only above a gain is told apart from one that is not: (s+0.1)²/(s³(s+1))', () => {
    // Routh: s⁴ + s³ + K s² + 0.2 K s + 0.01 K is stable where 0.8 K > 0.05, so above 0.0625.
    const swept = sweep(rational([1, 0.2, 0.01], [1, 1, 0, 0, 0]), 1e-3, 1e3);
    for (const K of [0.02, 0.06, 0.065, 0.2, 1, 30])
      expect(marginsOf(swept, K).stable, `K = ${K}`).toBe(K > 0.0625);
  });

  it('of an integrator with delay leaves 45° at π/(4 t), and a factor of 2.5 at π/(5 t)', () => {
    const swept = sweep(rational([1], [1, 0], 0.02), 1e-2, 1e3);
    expect(greatestGain(swept, quarter, 1)).toBeCloseTo(Math.PI / 4 / 0.02, 0);
    const both = greatestGain(swept, quarter, 2.5) ?? 0;
    expect(both / (Math.PI / 5 / 0.02)).toBeGreaterThan(0.93);
    expect(both / (Math.PI / 5 / 0.02)).toBeLessThan(1.07);
  });

  it('of two integrators has no gain that keeps a margin', () => {
    expect(greatestGain(sweep(rational([1], [1, 0, 0], 0.001), 1e-2, 1e3), quarter, 2.5)).toBeUndefined();
  });
});

describe('two masses on a spring', () => {
  it('are one mass where the spring is stiff: T / (travel (J s² + B s))', () => {
    const { gains: _, ...linear } = plainLinear('duty', { kp: 1, ki: 0, kd: 0 });
    const stiff = {
      ...linear,
      stiffness: 1e9,
      damping: 0,
      viscousFriction: 0,
      filter: 0,
      period: 1e-9,
      delay: 0,
    };
    const at = { re: 0, im: 0 };
    plantResponse(stiff)(10, at);
    // 600 / 2 over −0.65·100 + 62.5·10 j, behind a lag of 8 ms.
    const size = 300 / Math.hypot(65, 625) / Math.hypot(1, 0.08);
    expect(Math.hypot(at.re, at.im)).toBeCloseTo(size, 6);
    expect(Math.atan2(at.im, at.re)).toBeCloseTo(Math.atan2(625, 65) - Math.PI - Math.atan(0.08), 6);
  });

  it('resonate at √(k (1/J + 1/J)) free and at √(k/J) on a rotor that is held', () => {
    const [free, held] = resonances(plainLinear('current', { kp: 1, ki: 0, kd: 0 }));
    expect(free).toBeCloseTo(Math.sqrt(4000 * (4 + 2.5)), 9);
    expect(held).toBeCloseTo(100, 9);
  });

  it.each([
    ['duty', { kp: 4, ki: 0, kd: 0 }],
    ['speed', { kp: 3, ki: 0, kd: 0 }],
    ['current', { kp: 4, ki: 0, kd: 0.5 }],
  ] as const)(
    'under a %s command swing on in time above the gain at the limit, and not below',
    (kind, gains) => {
      const open = through(
        plantSweep(plainLinear(kind, gains)),
        controllerResponse({ ...gains, derivativeFilter: 0 }),
      );
      const { gainMargin = 0, stable } = marginsOf(open);
      expect(stable).toBe(true);
      expect(swings(kind, gains, 0.85 * gainMargin)).toBe(false);
      expect(swings(kind, gains, 1.15 * gainMargin)).toBe(true);
    },
  );
});

function swings(
  kind: DriveKind,
  { kp, ki, kd }: { kp: number; ki: number; kd: number },
  factor: number,
): boolean {
  const controller = plainController(kind, { kp: kp * factor, ki: ki * factor, kd: kd * factor });
  return stepTrial(plainPlant, controller, 1e-3, { innerStep: 2e-4, duration: 3 }).cycle > 0;
}

describe('suggested gains', () => {
  const kinds = fc.constantFrom<DriveKind>('duty', 'speed', 'current');

  it('keep 45° and a factor of 2.5, whatever the load', () => {
    fc.assert(
      fc.property(kinds, fc.double({ min: 0.01, max: 5, noNaN: true }), (kind, loadInertia) => {
        const linear = { ...plainLinear(kind, { kp: 1, ki: 0, kd: 0.05 }), loadInertia };
        const plant = plantSweep(linear);
        const kept = suggestedGains(plant, linear.gains);
        if (kept === null) return;
        const m = marginsOf(through(plant, controllerResponse(kept)));
        expect(m.stable).toBe(true);
        expect(m.phaseMargin).toBeGreaterThan(0.96 * quarter);
        expect(m.gainMargin ?? 9).toBeGreaterThan(2.2);
      }),
      { numRuns: 60, seed: 11 },
    );
  });

  it('add a derivative part where a torque is commanded without one', () => {
    const linear = plainLinear('current', { kp: 1, ki: 0, kd: 0 });
    const kept = suggestedGains(plantSweep({ ...linear, viscousFriction: 0 }), linear.gains);
    expect(kept?.kd ?? 0).toBeGreaterThan(0);
  });
});
