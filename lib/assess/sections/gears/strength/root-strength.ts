// What the tooth root bears: at once, for the life and held for long, warm and as filled.
import { meanStressStrength, sustainedStrength } from '@/lib/calc/gears/service/allowable';
import {
  fatigueFraction,
  fatigueStrength,
  lastFatigueCycles,
  solidFactor,
  staticStrength,
} from '@/lib/calc/gears/strength/allowable';
import { ruleValue } from '@/lib/catalog/materials/rules';
import type { CatalogValue } from '@/lib/catalog/value';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../../sheet';
import type { Work } from '../../../work';
import { lifeMissing } from '../../duty';
import { catalogued, lacking } from '../service/materials';
import type { GearCase } from './root-stress';

/** A strength with the catalogue values it rests on and the ranges of what it is a product of. */
export interface Strength {
  readonly value: Traced;
  readonly from: readonly CatalogValue[];
  readonly range: readonly { readonly value: number; readonly low: number; readonly high: number }[];
}

export interface Filling {
  readonly factor: Traced;
  readonly exponent: CatalogValue;
}

export function fillingOf(work: Work, { geometry: g, side }: GearCase): Filling | null {
  const exponent = ruleValue('rule_solid_fraction', 'core_strength_exponent');
  if (exponent === undefined) return null;
  const phi_s = g.stage[side].solidFraction;
  const factor = work.sheet.work('gears', g[side].at, solidFactor, { phi_s, n: catalogued(exponent) });
  return { factor, exponent };
}

/** Strength in the direction of the load, warm and as filled; `base` is the tensile or the yield strength. */
export function strengthOf(
  work: Work,
  c: GearCase,
  filling: Filling | null,
  base: CatalogValue | undefined,
  as: string,
): Strength | string {
  const { geometry: g, side, material, atRoot } = c;
  if (base === undefined) return lacking(material, material.across ? 'tensile_z' : 'tensile_xy');
  if (filling === null) return 'The catalogue holds no exponent for part-filled sections.';
  if (typeof atRoot === 'string') return atRoot;
  const inputs = { R_m: catalogued(base), f_T: atRoot.factor, f_s: filling.factor };
  const value = work.sheet.work('gears', g[side].at, staticStrength, inputs, as);
  const solid = g.stage[side].solidFraction.value >= 1;
  return {
    value,
    from: [base, ...atRoot.rows, ...(solid ? [] : [filling.exponent])],
    range: [
      { value: base.si, low: base.siLow, high: base.siHigh },
      { value: atRoot.factor.value, low: atRoot.low, high: atRoot.high },
    ],
  };
}

const reversing = practice(
  0.7,
  'the drive reverses, so the root bends both ways: Y_M 0.7, ISO 6336-3 (from memory)',
);
const oneWay = practice(1, 'the drive turns one way: the root bends one way');
const alreadyReversed = practice(1, 'the catalogue’s fatigue values of metals are for full reversal already');

/** Fatigue strength for the load cycles of the life, from the static one; or why there is none. */
export function fatigueOf(work: Work, c: GearCase, strength: Strength | string): Strength | string {
  const { material, load, side } = c;
  const { cycles } = load[side];
  if (typeof strength === 'string') return strength;
  if (cycles === null) return lifeMissing;
  if (cycles.value > lastFatigueCycles)
    return 'Its teeth are loaded more than 10⁸ times in the life; no fatigue line reaches that far.';
  const f4 = material.property('fatigue_fraction_1e4');
  const f5 = material.property('fatigue_fraction_1e5');
  const f6 = material.property('fatigue_fraction_1e6');
  if (f4 === undefined || f5 === undefined || f6 === undefined)
    return lacking(material, 'fatigue_fraction_1e6');
  const { at } = c.geometry[side];
  const f_N = work.sheet.work('gears', at, fatigueFraction, {
    N_L: cycles,
    f_4: catalogued(f4),
    f_5: catalogued(f5),
    f_6: catalogued(f6),
  });
  const sigma_FN = work.sheet.work('gears', at, fatigueStrength, { sigma_FS: strength.value, f_N });
  const bothWays = work.document.drive.direction === 'reversing';
  const Y_M = material.kind === 'metal' ? alreadyReversed : (c.meanStress ?? (bothWays ? reversing : oneWay));
  const value = work.sheet.work('gears', at, meanStressStrength, { sigma_FN, Y_M });
  // The range is that of the tabulated life nearest to the one asked for.
  const nearest = cycles.value < 3e4 ? f4 : cycles.value < 3e5 ? f5 : f6;
  return {
    value,
    from: [...strength.from, f4, f5, f6],
    range: [...strength.range, { value: nearest.si, low: nearest.siLow, high: nearest.siHigh }],
  };
}

/** Strength under a stress that is held, from the static one; or why there is none. */
export function sustainedOf(work: Work, c: GearCase, strength: Strength | string): Strength | string {
  const fraction = c.material.property('creep_stress_fraction_1000h');
  if (fraction === undefined) return lacking(c.material, 'creep_stress_fraction_1000h');
  if (typeof strength === 'string') return strength;
  const { at } = c.geometry[c.side];
  const value = work.sheet.work('gears', at, sustainedStrength, {
    sigma_FS: strength.value,
    c: catalogued(fraction),
  });
  return { value, from: [...strength.from, fraction], range: strength.range };
}
