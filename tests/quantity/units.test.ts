// Every factor to SI against an independent unit library, and against the definitions of the SI.
import { all, create } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { fromSI, toSI, type UnitKey, unitOf, units } from '@/lib/quantity/units';

// Independent: mathjs, with the revolution defined here and not taken from the code under test.
// The types call the list optional; the package always exports it.
if (all === undefined) throw new Error('mathjs without its functions');
const math = create(all);
math.createUnit('rpm', '6 deg/s');

const keys = Object.keys(units) as UnitKey[];
const dimensionless: readonly UnitKey[] = ['1', '%'];
const physical = keys.filter((key) => !dimensionless.includes(key));

describe('the closed list of units', () => {
  it.each(physical)('converts %s to SI as an independent unit library does', (key) => {
    const { typed, si } = unitOf(key);
    for (const amount of [0, 1, -3.7, 1234.5]) {
      const independent = math.unit(amount, typed).toNumber(si);
      expect(toSI(amount, key)).toBeCloseTo(independent, 9);
      expect(Math.abs(toSI(amount, key) - independent)).toBeLessThanOrEqual(1e-12 * Math.abs(independent));
    }
  });

  it.each(physical)('holds %s in a unit of the SI without prefix', (key) => {
    // The library's own SI bases differ for mass; a value of 1 in `si` must be 1 in base units.
    const { si } = unitOf(key);
    expect(math.unit(1, si).toSI().toNumber(si)).toBeCloseTo(1, 12);
    expect(si).not.toMatch(/\b(mm|cm|ms|hour|minute|deg|g|mohm)\b/);
  });

  it('takes a percent as a hundredth and a plain number as itself', () => {
    expect(toSI(45, '%')).toBeCloseTo(0.45, 15);
    expect(toSI(45, '1')).toBe(45);
  });

  // Published: BIPM, The International System of Units, 9th edition, Table 8 (minute, hour, degree) and 2.3.1
  // (t/°C = T/K − 273.15). Figures from memory.
  it.each([
    ['h', 1, 3600],
    ['deg', 180, Math.PI],
    ['degC', 0, 273.15],
    ['degC', -273.15, 0],
    ['A h', 1, 3600],
  ] as const)('agrees with the SI Brochure on %s', (key, amount, si) => {
    expect(toSI(amount, key)).toBeCloseTo(si, 12);
  });

  it.each(keys)('comes back from SI to what was given in %s', (key) => {
    for (const amount of [1e-3, 1, 42.42, -7e4]) {
      expect(fromSI(toSI(amount, key), key)).toBeCloseTo(amount, 8);
    }
  });

  it('prints no two units the same', () => {
    expect(new Set(keys.map((key) => unitOf(key).print)).size).toBe(keys.length);
  });
});
