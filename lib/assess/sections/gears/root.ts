// Tooth root: bending stress against static strength, fatigue strength and, when held, sustained strength.

import { meanStressStrength, sustainedStrength } from '@/lib/calc/gears/service/allowable';
import { creditedContactRatio } from '@/lib/calc/gears/service/mesh';
import {
  fatigueFraction,
  fatigueStrength,
  lastFatigueCycles,
  solidFactor,
  staticStrength,
} from '@/lib/calc/gears/strength/allowable';
import {
  rootContactRatioFactor,
  rootHelixFactor,
  rootStress,
  rootStressMetal,
} from '@/lib/calc/gears/strength/root-stress';
import { property } from '@/lib/catalog/materials/materials';
import { ruleValue } from '@/lib/catalog/materials/rules';
import type { CatalogValue } from '@/lib/catalog/value';
import type { Traced } from '@/lib/quantity/traced';
import { requiredRootFatigue, requiredRootStatic, requiredSustained } from '../../required';
import { practice } from '../../sheet';
import { addCheck, type Work } from '../../work';
import { lifeMissing } from '../duty';
import { toothForm } from './form';
import type { StageGeometry } from './geometry';
import { metalLoad } from './load-factors';
import type { StageLoad } from './loads';
import { catalogued, caveatOf, type GearMaterial, lacking, scatterOf } from './materials';
import type { Side } from './stage';
import type { Retention } from './temperature';

export interface RootMeshFactors {
  readonly Y_eps: Traced;
  readonly Y_beta: Traced;
}

/** What the checks of one gear need; anything not known is the sentence that says why. */
export interface GearCase {
  readonly geometry: StageGeometry;
  readonly side: Side;
  readonly material: GearMaterial;
  readonly mate: GearMaterial;
  readonly load: StageLoad;
  readonly shares: RootMeshFactors | null;
  readonly atRoot: Retention | string;
  readonly atFlank: Retention | string;
}

interface RootStress {
  readonly peak: Traced;
  readonly hold: Traced;
}

export function rootChecks(work: Work, c: GearCase): void {
  const { material } = c;
  const stress = rootStressOf(work, c);
  const filling = fillingOf(work, c);
  const tensile = strengthOf(work, c, filling, material.tensile, 'sigma_FS');
  const atOnce =
    material.kind === 'metal'
      ? strengthOf(work, c, filling, property(material.key, 'yield'), 'sigma_FS.yield')
      : tensile;
  peakCheck(work, c, stress, atOnce);
  lifeCheck(work, c, stress, tensile);
  holdCheck(work, c, stress, tensile);
}

function rootStressOf(
  work: Work,
  { geometry: g, side, material, mate, load, shares }: GearCase,
): RootStress | string {
  if (shares === null || g.missing !== null) return g.missing ?? 'The stage has no mesh.';
  const form = toothForm(work, g, side);
  if (typeof form === 'string') return form;
  const at = `${g.at}.${side}`;
  const K_A = work.design.duty.shockFactor;
  const common = { b: g.stage.faceWidth, m_n: g.stage.module, ...form, ...shares };
  const metals = material.kind === 'metal' && mate.kind === 'metal';
  const note = 'Load at the tip of one tooth, shared by the contact ratio; friction is not credited.';
  const stress = (F_t: Traced, K: Traced, as: string) =>
    metals
      ? work.sheet.work(
          'gears',
          at,
          rootStressMetal,
          {
            F_t,
            ...common,
            K_A: K,
            K_v: metalLoad.dynamic,
            K_Fbeta: metalLoad.face,
            K_Falpha: metalLoad.sharing,
          },
          as,
          note,
        )
      : work.sheet.work('gears', at, rootStress, { K_F: K, F_t, ...common }, as, note);
  return {
    peak: stress(load.forcePeak, K_A, 'sigma_F.peak'),
    hold: stress(load.forceHold, unshocked, 'sigma_F.hold'),
  };
}

const unshocked = practice(1, 'a held torque does not shock');

/** Factors of the mesh that both roots share; null without a mesh. */
export function rootMeshFactors(work: Work, g: StageGeometry): RootMeshFactors | null {
  const { sheet } = work;
  const { mesh } = g;
  if (mesh === null) return null;
  const eps_alphan = sheet.work('gears', g.at, creditedContactRatio, { eps_alphan: mesh.virtualRatio });
  return {
    Y_eps: sheet.work('gears', g.at, rootContactRatioFactor, { eps_alphan }),
    Y_beta: sheet.work('gears', g.at, rootHelixFactor, { eps_beta: mesh.overlap, beta: g.beta }),
  };
}

interface Strength {
  readonly value: Traced;
  readonly from: readonly CatalogValue[];
  readonly range: readonly { readonly value: number; readonly low: number; readonly high: number }[];
}

interface Filling {
  readonly factor: Traced;
  readonly exponent: CatalogValue;
}

function fillingOf(work: Work, { geometry: g, side }: GearCase): Filling | null {
  const exponent = ruleValue('rule_solid_fraction', 'core_strength_exponent');
  if (exponent === undefined) return null;
  const phi_s = g.stage[side].solidFraction;
  const factor = work.sheet.work('gears', `${g.at}.${side}`, solidFactor, { phi_s, n: catalogued(exponent) });
  return { factor, exponent };
}

/** Strength in the direction of the load, warm and as filled; `base` is the tensile or the yield strength. */
function strengthOf(
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
  const value = work.sheet.work('gears', `${g.at}.${side}`, staticStrength, inputs, as);
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

function peakCheck(work: Work, c: GearCase, stress: RootStress | string, strength: Strength | string): void {
  const { material } = c;
  const { consequence, peakTorque } = work.design.duty;
  const required = requiredRootStatic(material.kind, material.across, consequence);
  addCheck(work, {
    key: `${c.geometry.at}.${c.side}.root.peak`,
    section: 'gears',
    label: labelOf(c),
    mode: 'peak',
    unit: 'MPa',
    demandLabel: 'Root stress at the peak, shocks included',
    capacityLabel:
      material.kind === 'metal' ? 'Yield strength at temperature' : 'Static strength at temperature',
    ...sides(stress, strength),
    required: required.factor,
    requiredFrom: required.from,
    torque: { at: peakTorque, power: 1 },
  });
}

/** Every move is taken to reach the peak torque, shocks included: the document holds no load spectrum. */
function lifeCheck(work: Work, c: GearCase, stress: RootStress | string, tensile: Strength | string): void {
  const { consequence, peakTorque } = work.design.duty;
  const required = requiredRootFatigue(c.material.kind, consequence);
  addCheck(work, {
    key: `${c.geometry.at}.${c.side}.root.life`,
    section: 'gears',
    label: labelOf(c),
    mode: 'life',
    unit: 'MPa',
    demandLabel: 'Root stress at the peak of every move',
    capacityLabel: 'Fatigue strength for the life',
    ...sides(stress, fatigueOf(work, c, tensile), 'Every move is taken to reach the peak torque.'),
    required: required.factor,
    requiredFrom: required.from,
    torque: { at: peakTorque, power: 1 },
  });
}

const reversing = practice(
  0.7,
  'the drive reverses, so the root bends both ways: Y_M 0.7, ISO 6336-3 (from memory)',
);
const oneWay = practice(1, 'the drive turns one way: the root bends one way');
const alreadyReversed = practice(1, 'the catalogue’s fatigue values of metals are for full reversal already');

function fatigueOf(work: Work, c: GearCase, strength: Strength | string): Strength | string {
  const { material, load, side } = c;
  const { cycles } = load[side];
  const { key } = material;
  if (typeof strength === 'string') return strength;
  if (cycles === null) return lifeMissing;
  if (cycles.value > lastFatigueCycles)
    return 'Its teeth are loaded more than 10⁸ times in the life; no fatigue line reaches that far.';
  const f4 = property(key, 'fatigue_fraction_1e4');
  const f5 = property(key, 'fatigue_fraction_1e5');
  const f6 = property(key, 'fatigue_fraction_1e6');
  if (f4 === undefined || f5 === undefined || f6 === undefined)
    return lacking(material, 'fatigue_fraction_1e6');
  const at = `${c.geometry.at}.${side}`;
  const f_N = work.sheet.work('gears', at, fatigueFraction, {
    N_L: cycles,
    f_4: catalogued(f4),
    f_5: catalogued(f5),
    f_6: catalogued(f6),
  });
  const sigma_FN = work.sheet.work('gears', at, fatigueStrength, { sigma_FS: strength.value, f_N });
  const bothWays = work.document.drive.direction === 'reversing';
  const Y_M = material.kind === 'metal' ? alreadyReversed : bothWays ? reversing : oneWay;
  const value = work.sheet.work('gears', at, meanStressStrength, { sigma_FN, Y_M });
  // The range is that of the tabulated life nearest to the one asked for.
  const nearest = cycles.value < 3e4 ? f4 : cycles.value < 3e5 ? f5 : f6;
  return {
    value,
    from: [...strength.from, f4, f5, f6],
    range: [...strength.range, { value: nearest.si, low: nearest.siLow, high: nearest.siHigh }],
  };
}

function holdCheck(work: Work, c: GearCase, stress: RootStress | string, tensile: Strength | string): void {
  const { material } = c;
  const { consequence, holdTorque, holdTime } = work.design.duty;
  if (material.kind === 'metal' || holdTorque.value === 0 || holdTime.value === 0) return;
  const required = requiredSustained(consequence);
  addCheck(work, {
    key: `${c.geometry.at}.${c.side}.root.hold`,
    section: 'gears',
    label: `${labelOf(c)}, held`,
    mode: 'life',
    unit: 'MPa',
    demandLabel: 'Root stress while holding',
    capacityLabel: 'Stress borne for 1000 h',
    ...sides(
      stress,
      sustainedOf(work, c, tensile),
      'The creep values are for 1000 h; a shorter hold bears more.',
      'hold',
    ),
    required: required.factor,
    requiredFrom: required.from,
  });
}

function sustainedOf(work: Work, c: GearCase, strength: Strength | string): Strength | string {
  const fraction = property(c.material.key, 'creep_stress_fraction_1000h');
  if (fraction === undefined) return lacking(c.material, 'creep_stress_fraction_1000h');
  if (typeof strength === 'string') return strength;
  const at = `${c.geometry.at}.${c.side}`;
  const value = work.sheet.work('gears', at, sustainedStrength, {
    sigma_FS: strength.value,
    c: catalogued(fraction),
  });
  return { value, from: [...strength.from, fraction], range: strength.range };
}

function sides(
  stress: RootStress | string,
  strength: Strength | string,
  also: string | null = null,
  which: 'peak' | 'hold' = 'peak',
) {
  const known = typeof strength !== 'string';
  return {
    demand: typeof stress === 'string' ? null : stress[which],
    capacity: known ? strength.value : null,
    missing: typeof stress === 'string' ? stress : known ? null : strength,
    caveat: known ? caveatOf(strength.from, also) : null,
    scatter: known ? scatterOf(strength.value.value, strength.range) : null,
  };
}

function labelOf(c: GearCase): string {
  return `${c.geometry.place} ${c.side}, tooth root`;
}
