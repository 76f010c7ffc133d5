/** The three interferences of internal pairs against the outlines of the teeth, point by point. */
import { describe, expect, it } from 'vitest';
import { pinionProfileStart } from '@/lib/calc/gears/internal/contact-ratio';
import { involuteInterferenceMargin, ringTipLimit } from '@/lib/calc/gears/internal/interference';
import { trimming, trochoid, workInternalPair } from '../../../reference/gears/internal-pair';
import { degree, relative } from '../draws';
import { deepestFouling, deepestRingTip } from './tooth-outlines';

const spur = (z_1: number, z_2: number, h_a1 = 1, h_a2 = 1, x_1 = 0, x_2 = 0) =>
  workInternalPair({ m_n: 1, alpha_n: 20 * degree, beta: 0, z_1, z_2, x_1, x_2, h_a1, h_a2 });

/** In modules: deeper than this is fouling; what the sampling leaves of teeth that just touch is smaller. */
const touch = 1e-6;

describe('involute interference', () => {
  it.each([
    [16, 48],
    [18, 60],
    [20, 50],
  ])('begins where the ring’s tip reaches the base circle of a pinion %i/%i', (z_1, z_2) => {
    const limit = ringTipLimit.of(spur(z_1, z_2));
    const h_limit = (z_2 - limit) / 2;
    const short = spur(z_1, z_2, 1, h_limit - 0.02);
    const full = spur(z_1, z_2, 1, h_limit + 0.1);
    expect(deepestRingTip(short)).toBeLessThan(touch);
    expect(deepestRingTip(full)).toBeGreaterThan(1e-5);
    expect(involuteInterferenceMargin.of(short)).toBeGreaterThan(0);
    expect(involuteInterferenceMargin.of(full)).toBeLessThan(0);
    expect(pinionProfileStart.of(short)).toBeGreaterThan(0);
    expect(pinionProfileStart.of(full)).toBeLessThan(0);
    const at = spur(z_1, z_2, 1, h_limit);
    expect(Math.abs(involuteInterferenceMargin.of(at))).toBeLessThan(1e-12);
    expect(relative(at.d_a2, limit)).toBeLessThan(1e-12);
  });
});

describe('the 16/24 pair of the handbook', () => {
  // Found here, no published figure: with x = 0 and 0.5 the ring's tip reaches 0.003 base pitches too deep.
  it('breaks the involute condition by a hair', () => {
    const margin = involuteInterferenceMargin.of(spur(16, 24, 1, 1, 0, 0.5));
    expect(margin).toBeLessThan(0);
    expect(margin).toBeGreaterThan(-0.003);
  });
});

describe('trochoid interference', () => {
  // The margin changes sign between these pairs; running in place, the outlines foul on one side of it only.
  it.each([
    [40, 44],
    [40, 46],
    [40, 47],
    [40, 52],
    [25, 34],
    [28, 34],
    [50, 57],
  ])('has the sign that the outlines of %i/%i show as they run', (z_1, z_2) => {
    const pair = spur(z_1, z_2);
    const deepest = deepestFouling(pair, [0], 48);
    expect(deepest > touch).toBe(trochoid(pair) < 0);
  });

  it('shows on both sides among those pairs', () => {
    expect(trochoid(spur(40, 44))).toBeLessThan(0);
    expect(trochoid(spur(40, 52))).toBeGreaterThan(0);
  });
});

describe('radial assembly', () => {
  const moves = Array.from({ length: 41 }, (_, i) => (3 * i) / 40);

  it.each([
    [20, 34],
    [20, 36],
    [20, 38],
    [24, 39],
    [24, 42],
    [30, 45],
    [30, 48],
    [30, 60],
  ])('is possible for %i/%i exactly when no outline fouls on the way in', (z_1, z_2) => {
    const pair = spur(z_1, z_2, 1.25);
    const deepest = deepestFouling(pair, moves, 24);
    expect(deepest > 1e-4).toBe(trimming(pair) < 0);
  });

  it('shows on both sides among those pairs', () => {
    expect(trimming(spur(20, 34, 1.25))).toBeLessThan(0);
    expect(trimming(spur(30, 60, 1.25))).toBeGreaterThan(0);
  });
});
