// What the tooth root bears at once and held for long, warm and as filled.
import { sustainedStrength } from '@/lib/calc/gears/service/allowable';
import { solidFactor, staticStrength } from '@/lib/calc/gears/strength/allowable';
import { ruleValue } from '@/lib/catalog/materials/rules';
import type { CatalogValue } from '@/lib/catalog/value';
import type { Traced } from '@/lib/quantity/traced';
import type { Work } from '../../../work';
import { catalogued, lacking } from '../service/materials';
import { type GearCase, pathOf } from './gear-case';

export interface Range {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** A strength with the catalogue values it rests on and the ranges of what it is a product of. */
export interface Strength {
  readonly value: Traced;
  readonly from: readonly CatalogValue[];
  readonly range: readonly Range[];
}

export interface Filling {
  readonly factor: Traced;
  readonly exponent: CatalogValue;
  readonly range: Range;
  /** Nothing is left out, so the exponent has no say. */
  readonly solid: boolean;
}

export function fillingOf(work: Work, c: GearCase): Filling | null {
  const exponent = ruleValue('rule_solid_fraction', 'core_strength_exponent');
  if (exponent === undefined) return null;
  const phi_s = c.geometry.stage[c.side].solidFraction;
  const factor = work.sheet.work('gears', pathOf(c), solidFactor, { phi_s, n: catalogued(exponent) });
  // A higher exponent leaves less strength.
  const range = {
    value: factor.value,
    low: phi_s.value ** exponent.siHigh,
    high: phi_s.value ** exponent.siLow,
  };
  return { factor, exponent, range, solid: phi_s.value >= 1 };
}

/** Strength in the direction of the load, warm and as filled; `base` is the tensile or the yield strength. */
export function strengthOf(
  work: Work,
  c: GearCase,
  filling: Filling | null,
  base: CatalogValue | undefined,
  as: string,
): Strength | string {
  const { material, atRoot } = c;
  if (base === undefined) return lacking(material, material.across ? 'tensile_z' : 'tensile_xy');
  if (filling === null) return noExponent;
  if (typeof atRoot === 'string') return atRoot;
  const inputs = { R_m: catalogued(base), f_T: atRoot.factor, f_s: filling.factor };
  const value = work.sheet.work('gears', pathOf(c), staticStrength, inputs, as);
  return {
    value,
    from: [base, ...atRoot.rows, ...(filling.solid ? [] : [filling.exponent])],
    range: [
      { value: base.si, low: base.siLow, high: base.siHigh },
      { value: atRoot.factor.value, low: atRoot.low, high: atRoot.high },
      filling.range,
    ],
  };
}

export const noExponent = 'The catalogue holds no exponent for part-filled sections.';

/** Strength under a stress that is held, from the static one; or why there is none. */
export function sustainedOf(work: Work, c: GearCase, strength: Strength | string): Strength | string {
  const fraction = c.material.property('creep_stress_fraction_1000h');
  if (fraction === undefined) return lacking(c.material, 'creep_stress_fraction_1000h');
  if (typeof strength === 'string') return strength;
  const value = work.sheet.work('gears', pathOf(c), sustainedStrength, {
    sigma_FS: strength.value,
    c: catalogued(fraction),
  });
  return {
    value,
    from: [...strength.from, fraction],
    range: [...strength.range, { value: fraction.si, low: fraction.siLow, high: fraction.siHigh }],
  };
}
