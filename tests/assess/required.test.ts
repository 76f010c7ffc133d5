// The factors asked for: the catalogue's table for prints, stated practice for metal, and which case takes which.
import { describe, expect, it } from 'vitest';
import {
  requiredFlank,
  requiredRootFatigue,
  requiredRootStatic,
  requiredSustained,
} from '@/lib/assess/required';

describe('required factors', () => {
  // Frozen beside the table of the method: static 2.5/4 in the layers, 3.5/6 across, fatigue 1.7/2.4, sustained 1.5/2.
  it.each([
    ['printed', false, 'harmless', 2.5],
    ['printed', false, 'harm', 4],
    ['printed', true, 'harmless', 3.5],
    ['printed', true, 'harm', 6],
    ['moulded', false, 'harmless', 2.5],
    ['metal', false, 'harmless', 1.5],
    ['metal', false, 'harm', 2],
  ] as const)('ask of a %s root, across the layers %s, %s: %f', (kind, across, consequence, factor) => {
    expect(requiredRootStatic(kind, across, consequence).factor).toBe(factor);
  });

  it('ask less on fatigue, whose values are of 90 % survival, than on static strength', () => {
    expect(requiredRootFatigue('printed', false, 'harmless').factor).toBe(1.7);
    expect(requiredRootFatigue('printed', false, 'harm').factor).toBe(2.4);
    expect(requiredSustained(false, 'harm').factor).toBe(2);
  });

  // By hand: static across over static in the layers, 3.5/2.5 = 1.4 and 6/4 = 1.5, times 1.7 and 2.4, 1.5 and 2.
  it('ask across the layers as much more of fatigue and creep as of one overload', () => {
    expect(requiredRootFatigue('printed', true, 'harmless').factor).toBe(2.38);
    expect(requiredRootFatigue('printed', true, 'harm').factor).toBe(3.6);
    expect(requiredSustained(true, 'harmless').factor).toBe(2.1);
    expect(requiredSustained(true, 'harm').factor).toBe(3);
    expect(requiredRootFatigue('printed', true, 'harm').from).toMatch(/across the layers/);
  });

  it('ask on pressure the root of what they ask on stress, rounded up', () => {
    for (const consequence of ['harmless', 'harm'] as const) {
      const stress = requiredRootFatigue('moulded', false, consequence).factor;
      const pressure = requiredFlank('moulded', consequence).factor;
      expect(pressure ** 2).toBeGreaterThanOrEqual(stress);
      expect(pressure).toBeCloseTo(Math.sqrt(stress), 1);
    }
  });

  it('put no factor on the flank of a print, whose values only rank', () => {
    expect(requiredFlank('printed', 'harm').factor).toBe(1);
    expect(requiredFlank('printed', 'harm').from).toMatch(/no published basis/);
  });

  it('never ask less where a break can hurt, and say where they come from', () => {
    for (const kind of ['moulded', 'metal'] as const)
      for (const of of [
        requiredFlank,
        (k: typeof kind, c: 'harm' | 'harmless') => requiredRootFatigue(k, false, c),
      ]) {
        expect(of(kind, 'harm').factor).toBeGreaterThan(of(kind, 'harmless').factor);
        expect(of(kind, 'harm').from).toMatch(/can hurt someone.*common practice/);
      }
  });
});
