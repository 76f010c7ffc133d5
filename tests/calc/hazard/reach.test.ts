/** How far things fly: against a search over angles, and a throw worked in a textbook. */
import { expect, it } from 'vitest';
import { keepOut, thrownRange, thrownReach } from '@/lib/calc/hazard/reach';

/** Where a throw at an angle lands, m. */
function landing(v: number, h: number, angle: number, g_n: number): number {
  const up = v * Math.sin(angle);
  return ((up + Math.sqrt(up ** 2 + 2 * g_n * h)) / g_n) * v * Math.cos(angle);
}

it('throws as far as the best of all angles (independent)', () => {
  for (const v of [0.5, 3, 14.4]) {
    let best = 0;
    for (let a = 0; a < 1.57; a += 1e-4) best = Math.max(best, landing(v, 1, a, 9.80665));
    expect(thrownRange.of({ v, g_n: 9.80665, h: 1 })).toBeCloseTo(best, 5);
  }
});

it('is not beaten by a throw worked in a textbook', () => {
  // Published: Giancoli, Physics, 7th ed., chapter 3, problem 29: 14.4 m/s at 34° from 2.10 m lands at 22.3 m.
  // The solution rounds the time of flight to 1.87 s.
  expect(Math.abs(landing(14.4, 2.1, (34 * Math.PI) / 180, 9.8) - 22.3)).toBeLessThan(0.1);
  expect(thrownRange.of({ v: 14.4, g_n: 9.8, h: 2.1 })).toBeGreaterThan(22.3);
});

it('counts both from the axis', () => {
  expect(thrownReach.of({ r: 0.6, d_thr: 2 })).toBeCloseTo(2.6, 12);
  expect(keepOut.of({ r: 0.6, l_p: 0.85 })).toBeCloseTo(1.45, 12);
});
