/** Steels after ISO 6336 against the material catalogue, which knows them from other sources. */
import { describe, expect, it } from 'vitest';
import { enduranceByHardness } from '@/lib/calc/gears/strength/steel-root';
import { gearSteels, steelConstants } from '@/lib/catalog/gear-steels';
import type { MaterialKey } from '@/lib/catalog/materials/labels';
import { materialKeys } from '@/lib/catalog/materials/labels';
import { property } from '@/lib/catalog/materials/materials';

const steels = Object.entries(gearSteels) as [MaterialKey, NonNullable<(typeof gearSteels)[MaterialKey]>][];

describe.each(steels)('%s', (key, steel) => {
  const { value: H } = steel.hardness;
  const tensile = property(key, 'tensile_xy');

  it('has the hardness of its tensile strength: 3.4 MPa a point of Brinell, 3.2 of Vickers', () => {
    // ISO 18265 (from memory), within a twentieth.
    const perPoint = steel.scale === 'HB' ? 3.4e6 : 3.2e6;
    expect(Math.abs((H * perPoint) / (tensile?.si ?? 0) - 1)).toBeLessThan(0.05);
  });

  it('bears on its flanks for 10⁶ cycles what the catalogue gives, within the catalogue’s range', () => {
    const { knee, slope } = steelConstants.flankLife;
    const allowed = enduranceByHardness.of({ ...steel.flank, H }) * (knee / 1e6) ** slope;
    const row = property(key, 'flank_pressure_allow_1e6');
    expect(allowed).toBeGreaterThan(row?.siLow ?? Number.NaN);
    expect(allowed).toBeLessThan(row?.siHigh ?? Number.NaN);
  });

  it('bears in a root that is fully reversed about what a polished bar of it bears in rotating bending', () => {
    const { knee, slope } = steelConstants.rootLife;
    const M = steelConstants.meanStress.value;
    const swelling = 2 * enduranceByHardness.of({ ...steel.root, H }) * (knee / 1e6) ** slope;
    const reversed = swelling / (1 + (1 - M) / (1 + M));
    const bar = (property(key, 'fatigue_fraction_1e6')?.si ?? Number.NaN) * (tensile?.si ?? Number.NaN);
    // The lowest grade of the standard, a milled surface and 99 % survival against a polished bar at 50 %.
    expect(reversed / bar).toBeGreaterThan(0.75);
    expect(reversed / bar).toBeLessThan(1.05);
  });
});

describe('fatigue rows', () => {
  it('fall from 10⁴ to 10⁵ cycles and stand below the static strength, in every material that has them', () => {
    let found = 0;
    for (const key of materialKeys) {
      const rows = (['fatigue_fraction_1e4', 'fatigue_fraction_1e5', 'fatigue_fraction_1e6'] as const).map(
        (name) => property(key, name)?.si,
      );
      const [f4, f5, f6] = rows;
      if (f4 === undefined || f5 === undefined || f6 === undefined) continue;
      found++;
      expect(f4, key).toBeLessThan(1);
      expect(f5, key).toBeLessThan(f4);
      expect(f6, key).toBeLessThan(f5);
    }
    expect(found).toBeGreaterThan(15);
  });
});
