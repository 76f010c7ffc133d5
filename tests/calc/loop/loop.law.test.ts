/** The loop: margins against a time step of the test's own, and describing functions against Fourier sums. */
import { describe, expect, it } from 'vitest';
import {
  backlashGain,
  backlashPhase,
  deadBandGain,
  quantiserGain,
  relayDeadBandGain,
} from '@/lib/calc/loop/describing';
import { rational } from '@/lib/calc/loop/response';
import { commandResolution, effectiveDelay, ultimateGain } from '@/lib/calc/loop/sampling';
import { dampingOfOvershoot, overshoot } from '@/lib/calc/loop/second-order';
import { marginsOfLoop } from '../../reference/open-loop';

/** First harmonic of an element driven by A sin x: its in-phase and quadrature parts over A (second period counts). */
function harmonic(element: (x: number) => number, A: number): readonly [number, number] {
  const n = 40_000;
  let inPhase = 0;
  let quadrature = 0;
  for (let i = 0; i < 2 * n; i += 1) {
    const angle = (2 * Math.PI * i) / n;
    const y = element(A * Math.sin(angle));
    if (i < n) continue;
    inPhase += (2 / n) * y * Math.sin(angle);
    quadrature += (2 / n) * y * Math.cos(angle);
  }
  return [inPhase / A, quadrature / A];
}

describe('describing functions agree with a Fourier sum over the element itself (independent)', () => {
  it.each([1.25, 2, 4, 10])('backlash of half gap 1 at amplitude %d', (A) => {
    let output = 0;
    const play = (x: number) => {
      output = Math.min(Math.max(output, x - 1), x + 1);
      return output;
    };
    const [p, q] = harmonic(play, A);
    expect(backlashGain.of({ b: 1, A })).toBeCloseTo(Math.hypot(p, q), 3);
    expect(backlashPhase.of({ b: 1, A })).toBeCloseTo(Math.atan2(q, p), 3);
  });

  it.each([1.2, 3])('dead band, relay with dead band and quantiser at amplitude %d', (A) => {
    const dead = (x: number) => (Math.abs(x) <= 1 ? 0 : x - Math.sign(x));
    expect(deadBandGain.of({ d: 1, A })).toBeCloseTo(harmonic(dead, A)[0], 3);
    const relay = (x: number) => (Math.abs(x) <= 1 ? 0 : Math.sign(x));
    expect(relayDeadBandGain.of({ M: 1, A, d: 1 })).toBeCloseTo(harmonic(relay, A)[0], 3);
    expect(quantiserGain(1, A)).toBeCloseTo(harmonic(Math.round, A)[0], 3);
  });

  it('lets nothing through a quantiser below half a step', () => {
    expect(quantiserGain(1, 0.49)).toBe(0);
  });
});

describe('an integrating loop with delay', () => {
  /** Size of the error after long time of e' = −K e(t − delay), stepped with a memory of the past. */
  const grows = (gain: number, delay: number) => {
    const n = 400;
    const past = new Array<number>(n + 1).fill(1);
    let late = 0;
    for (let i = 0; i < 60 * n; i += 1) {
      const now = past[past.length - 1] ?? Number.NaN;
      past.push(now - (gain * delay * (past[past.length - 1 - n] ?? Number.NaN)) / n);
      if (i > 50 * n) late = Math.max(late, Math.abs(now));
    }
    return late;
  };

  it('settles below the gain at the limit and swings up above it (independent)', () => {
    const K_u = ultimateGain.of({ t_d: 0.02, K: 1 });
    expect(grows(0.9 * K_u, 0.02)).toBeLessThan(0.5);
    expect(grows(1.1 * K_u, 0.02)).toBeGreaterThan(2);
  });

  it('has the same limit by its frequency response', () => {
    const found = marginsOfLoop({ gain: 1, poles: [0], delay: 0.02 });
    expect(found.gainMargin).toBeCloseTo(ultimateGain.of({ t_d: 0.02, K: 1 }), 6);
  });

  it('counts half a sample and the latency as its delay', () => {
    expect(effectiveDelay.of({ t_s: 0.01, t_lat: 0.02 })).toBeCloseTo(0.025, 12);
    expect(commandResolution.of({ phi_out: Math.PI, N_cmd: 10 })).toBeCloseTo(Math.PI / 1024, 12);
  });
});

describe('the frequency response', () => {
  it('takes numerator and denominator as they stand, and finds no crossing where there is none', () => {
    const at = { re: 0, im: 0 };
    rational([2, 2], [1, 10])(3, at);
    expect(Math.hypot(at.re, at.im)).toBeCloseTo((2 * Math.hypot(3, 1)) / Math.hypot(3, 10), 12);
    expect(Math.atan2(at.im, at.re)).toBeCloseTo(Math.atan(3) - Math.atan(0.3), 12);
    expect(marginsOfLoop({ gain: 0.1, poles: [-1] })).toEqual({
      stable: true,
      gainCrossover: undefined,
      phaseMargin: undefined,
      phaseCrossover: undefined,
      gainMargin: undefined,
    });
  });

  it('comes back from overshoot to damping', () => {
    for (const zeta of [0.1, 0.4, 0.8])
      expect(dampingOfOvershoot.of({ OS: overshoot.of({ zeta }) })).toBeCloseTo(zeta, 9);
  });
});
