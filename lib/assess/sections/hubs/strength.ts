// What the material of a hub, shaft or seat bears at the temperature of the case: at once, and held.
import { retentionBetween, sustainedStrength } from '@/lib/calc/gears/service/allowable';
import { solidFactor, staticStrength } from '@/lib/calc/gears/strength/allowable';
import { shearStrength } from '@/lib/calc/shafts/hubs/load';
import { ruleValue } from '@/lib/catalog/materials/rules';
import { retentionRows } from '@/lib/catalog/materials/strength';
import { shearOverYield } from '@/lib/catalog/shafts/hub-limits';
import type { CatalogValue } from '@/lib/catalog/value';
import { printSI } from '@/lib/quantity/print';
import type { Traced } from '@/lib/quantity/traced';
import type { SectionKey } from '../../assessment';
import { cited, practice } from '../../sheet';
import type { Work } from '../../work';
import { catalogued, type GearMaterial, lacking } from '../gears/service/materials';

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

/** Where a strength is worked: the section and path of the step, and words that tell the two bodies apart. */
export interface StrengthAt {
  readonly section: SectionKey;
  readonly at: string;
  /** Ending of the symbols, e.g. `hub`. */
  readonly as: string;
}

interface Kept {
  readonly factor: Traced;
  readonly low: number;
  readonly high: number;
  readonly rows: readonly CatalogValue[];
}

/** Share of its strength that a material keeps at a temperature, or why that is not known. */
export function keptAt(work: Work, w: StrengthAt, m: GearMaterial, theta: Traced | string): Kept | string {
  if (typeof theta === 'string') return theta;
  const rows = retentionRows(m.key, theta.value);
  if (rows === undefined)
    return `It gets ${printSI(theta.value, 'degC')} warm; the catalogue knows the strength of ${m.name} up to 80 °C only.`;
  const { before, after } = rows;
  const single = (row: CatalogValue): Kept => ({
    factor: catalogued(row),
    low: row.siLow,
    high: row.siHigh,
    rows: [row],
  });
  // Metals keep nearly all up to 80 °C, so the row there is taken, to the safe side.
  if (m.kind === 'metal') {
    const last = m.property('retention_80C');
    return last === undefined ? lacking(m, 'retention_80C') : single(last);
  }
  if (before === after) return single(before.retention);
  const factor = work.sheet.work(
    w.section,
    w.at,
    retentionBetween,
    {
      r_1: catalogued(before.retention),
      r_2: catalogued(after.retention),
      theta,
      theta_1: practice(before.kelvin, 'temperature of the catalogue row below'),
      theta_2: practice(after.kelvin, 'temperature of the catalogue row above'),
    },
    `f_T.${w.as}`,
  );
  const share = (theta.value - before.kelvin) / (after.kelvin - before.kelvin);
  const mix = (a: number, b: number) => a + (b - a) * share;
  return {
    factor,
    low: mix(before.retention.siLow, after.retention.siLow),
    high: mix(before.retention.siHigh, after.retention.siHigh),
    rows: [before.retention, after.retention],
  };
}

/** Pressure or tension a body bears at once: yield of metals, tensile strength of plastics, warm and as filled. */
export function borneAtOnce(work: Work, w: StrengthAt, body: Body, theta: Traced | string): Borne | string {
  const { material: m, filling } = body;
  const base = m.kind === 'metal' ? m.property('yield') : m.tensile;
  if (base === undefined)
    return lacking(m, m.kind === 'metal' ? 'yield' : m.across ? 'tensile_z' : 'tensile_xy');
  const kept = keptAt(work, w, m, theta);
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
