// What the material of a hub, shaft or seat bears at the temperature of the case: at once, and held.
import { sustainedStrength } from '@/lib/calc/gears/service/allowable';
import { solidFactor, staticStrength } from '@/lib/calc/gears/strength/allowable';
import { shearStrength } from '@/lib/calc/shafts/hubs/load';
import { ruleValue } from '@/lib/catalog/materials/rules';
import { shearOverYield } from '@/lib/catalog/shafts/hub-limits';
import type { CatalogValue } from '@/lib/catalog/value';
import type { Traced } from '@/lib/quantity/traced';
import { cited } from '../../sheet';
import type { Work } from '../../work';
import { catalogued, type GearMaterial, lacking } from '../gears/service/materials';
import { retentionAt, type StrengthAt } from '../gears/service/retention';

/** One of the two bodies of a joint. */
export interface Body {
  readonly material: GearMaterial;
  /** Share of it that is filled. */
  readonly filling: Traced;
  /** False where a print's layers are not described; they are then taken across the load. */
  readonly layersKnown: boolean;
}

/** A strength with the catalogue values it rests on and the ranges of what it is a product of. */
export interface Borne {
  readonly value: Traced;
  readonly from: readonly CatalogValue[];
  readonly range: readonly { readonly value: number; readonly low: number; readonly high: number }[];
}

/** Pressure or tension a body bears at once: yield of metals, tensile strength of plastics, warm and as filled. */
export function borneAtOnce(work: Work, w: StrengthAt, body: Body, theta: Traced | string): Borne | string {
  const { material: m, filling } = body;
  const base = m.kind === 'metal' ? m.property('yield') : m.tensile;
  if (base === undefined)
    return lacking(m, m.kind === 'metal' ? 'yield' : m.across ? 'tensile_z' : 'tensile_xy');
  const kept = typeof theta === 'string' ? theta : retentionAt(work, w, m, theta);
  if (typeof kept === 'string') return kept;
  const n = ruleValue('rule_solid_fraction', 'core_strength_exponent');
  if (n === undefined) return 'The catalogue holds no exponent for part-filled sections.';
  const { section, at, as } = w;
  const f_s = work.sheet.work(section, at, solidFactor, { phi_s: filling, n: catalogued(n) }, `f_s.${as}`);
  const value = work.sheet.work(
    section,
    at,
    staticStrength,
    { R_m: catalogued(base), f_T: kept.factor, f_s },
    `R.${as}`,
  );
  return {
    value,
    from: [base, ...kept.rows, ...(filling.value >= 1 ? [] : [n])],
    range: [
      { value: base.si, low: base.siLow, high: base.siHigh },
      { value: kept.factor.value, low: kept.low, high: kept.high },
    ],
  };
}

/** Pressure a plastic bears for 1000 h, from what it bears at once. */
export function borneHeld(work: Work, w: StrengthAt, body: Body, atOnce: Borne): Borne | string {
  const fraction = body.material.property('creep_stress_fraction_1000h');
  if (fraction === undefined) return lacking(body.material, 'creep_stress_fraction_1000h');
  const value = work.sheet.work(
    w.section,
    w.at,
    sustainedStrength,
    { sigma_FS: atOnce.value, c: catalogued(fraction) },
    `R_c.${w.as}`,
  );
  return {
    value,
    from: [...atOnce.from, fraction],
    range: [...atOnce.range, { value: fraction.si, low: fraction.siLow, high: fraction.siHigh }],
  };
}

const metalShear = cited(shearOverYield, 'shear over yield strength');

/** Shear stress a body bears, from the strength it bears. */
export function borneInShear(work: Work, w: StrengthAt, body: Body, borne: Borne): Borne | string {
  const { section, at, as } = w;
  if (body.material.kind === 'metal') {
    const value = work.sheet.work(
      section,
      at,
      shearStrength,
      { k_s: metalShear, R: borne.value },
      `tau.${as}`,
    );
    return { ...borne, value };
  }
  const rule = ruleValue('rule_layer_direction', 'shear_over_tension_interlayer');
  if (rule === undefined) return 'The catalogue holds no shear over tension of plastics.';
  const value = work.sheet.work(
    section,
    at,
    shearStrength,
    { k_s: catalogued(rule), R: borne.value },
    `tau.${as}`,
  );
  return {
    value,
    from: [...borne.from, rule],
    range: [...borne.range, { value: rule.si, low: rule.siLow, high: rule.siHigh }],
  };
}

/** Said of prints whose layers nobody described. */
export function layersCaveat(bodies: readonly Body[]): string | null {
  return bodies.some((b) => b.material.kind === 'printed' && !b.layersKnown)
    ? 'Layers that are not described are taken across the load, the safe side.'
    : null;
}
