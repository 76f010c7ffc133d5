/** The belt table: whole, ordered, and founded. */
import { describe, expect, it } from 'vitest';
import { beltKeys, belts, shareAtSpeed } from '@/lib/catalog/belts';

describe.each(beltKeys.map((key) => [key, belts[key]] as const))('belt %s', (_, belt) => {
  it('has positive values, a source for each force and a pulley with room for a drive of six teeth', () => {
    for (const force of [belt.teeth, belt.cords]) {
      expect(force.force).toBeGreaterThan(0);
      expect(force.width).toBeGreaterThan(0);
      expect(force.exponent).toBeGreaterThanOrEqual(1);
      expect(force.source.length).toBeGreaterThan(20);
    }
    expect(belt.mass).toBeGreaterThan(0);
    // Six teeth on half a pulley ask for twelve; pulleys of ten are made, but not for a full load.
    expect(belt.leastTeeth).toBeGreaterThanOrEqual(10);
    expect(belt.strain.low).toBeLessThan(belt.strain.value);
    expect(belt.strain.high).toBeGreaterThan(belt.strain.value);
  });

  it('is heavier and stronger the greater its pitch within its family', () => {
    const family = beltKeys.filter(
      (k) =>
        belts[k].strain.value === belt.strain.value &&
        /curved/.test(belts[k].label) === /curved/.test(belt.label),
    );
    for (const key of family) {
      const other = belts[key];
      if (other.pitch <= belt.pitch) continue;
      expect(other.mass).toBeGreaterThan(belt.mass);
      expect(other.cords.force / other.cords.width).toBeGreaterThan(belt.cords.force / belt.cords.width);
    }
  });
});

describe('the belt table', () => {
  // ISO 5296: 0.080, 0.200, 0.375 and 0.500 inch.
  it('has the inch pitches of the standard', () => {
    const inches = (['mxl', 'xl', 'l', 'h'] as const).map((key) => belts[key].pitch / 25.4e-3);
    expect(inches.map((v) => Math.round(v * 1000) / 1000)).toEqual([0.08, 0.2, 0.375, 0.5]);
  });

  // Published table of polyurethane belts: one tooth of T5 passes on 18.45 N/cm at 500 and 16.32 N/cm at 1000 turns a minute.
  it('takes for a speed between two rows the lower force, and none beyond the last', () => {
    const force = (rpm: number) => (shareAtSpeed(belts.t5, rpm) ?? Number.NaN) * 24.7;
    expect(force(0)).toBeCloseTo(24.7, 9);
    expect(force(500)).toBeCloseTo(18.45, 9);
    expect(force(501)).toBeCloseTo(16.32, 9);
    expect(shareAtSpeed(belts.t5, 10_001)).toBeUndefined();
    expect(shareAtSpeed(belts.t10, 5001)).toBeUndefined();
    expect(shareAtSpeed(belts.c3, 20_000)).toBe(1);
  });

  it('falls without a step back for every belt that falls', () => {
    for (const key of beltKeys) {
      const rows = belts[key].fall ?? [];
      for (const [i, row] of rows.entries()) expect(row.share).toBeLessThanOrEqual(rows[i - 1]?.share ?? 1);
    }
  });

  it('grants the teeth of a polyurethane belt no more than its cords could carry', () => {
    for (const key of ['t2_5', 't5', 't10', 'at5'] as const)
      expect(belts[key].teeth.force).toBeLessThan(belts[key].cords.force);
  });
});
