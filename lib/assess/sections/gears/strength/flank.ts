// Flank: Hertzian pressure of one gear against what its material bears for the life.
import { flankPressureOfStep, forceOfStep } from '@/lib/calc/gears/service/spectrum';
import {
  elasticityFactor,
  flankContactRatioFactor,
  flankHelixFactor,
  flankHelixFactorMetal,
  flankPressure,
  zoneFactor,
} from '@/lib/calc/gears/strength/flank-pressure';
import { metalFlankPressure, singlePairFactor, singlePairRatio } from '@/lib/calc/gears/strength/steel-flank';
import type { Traced } from '@/lib/quantity/traced';
import { requiredFlank } from '../../../required';
import { practice } from '../../../sheet';
import { addCheck, finite, type Work } from '../../../work';
import type { StageGeometry } from '../pair/geometry';
import type { StageLoad } from '../service/loads';
import { catalogued, caveatOf, type GearMaterial, lacking, scatterOf } from '../service/materials';
import { type FlankPressures, flankLifeOf } from './flank-life';
import { type GearCase, nameOf, pathOf } from './gear-case';
import { metalLoadCaveat, metalLoadOf } from './load-factors';

/** Flank pressure of a stage at the pitch point with the shock factor alone, the same on both gears; or why it is not known. */
export function flankPressureOf(
  work: Work,
  g: StageGeometry,
  load: StageLoad,
  pinion: GearMaterial,
  wheel: GearMaterial,
): Traced | string {
  if (g.mesh === null || g.missing !== null) return g.missing ?? 'The stage has no mesh.';
  const { sheet } = work;
  const Z_E = elasticity(work, g.at, pinion, wheel);
  if (typeof Z_E === 'string') return Z_E;
  const { alphaWt: alpha_wt, contactRatio, overlap } = g.mesh;
  const Z_H = sheet.work('gears', g.at, zoneFactor, { beta_b: g.betaB, alpha_wt, alpha_t: g.alphaT });
  const Z_eps = finite(
    sheet.work('gears', g.at, flankContactRatioFactor, { eps_alpha: contactRatio, eps_beta: overlap }),
  );
  if (Z_eps === null) return 'The contact ratio lies outside what the flank formula covers.';
  const metals = pinion.kind === 'metal' && wheel.kind === 'metal';
  const Z_beta = sheet.work('gears', g.at, metals ? flankHelixFactorMetal : flankHelixFactor, {
    beta: g.beta,
  });
  return sheet.work('gears', g.at, flankPressure, {
    Z_H,
    Z_E,
    Z_eps,
    Z_beta,
    K_H: work.design.duty.shockFactor,
    F_t: load.forcePeak,
    b: g.stage.faceWidth,
    d_1: g.pinion.reference,
    u: g.flankRatio,
  });
}

function elasticity(work: Work, at: string, pinion: GearMaterial, wheel: GearMaterial): Traced | string {
  const nu1 = pinion.property('poisson');
  const nu2 = wheel.property('poisson');
  if (pinion.modulus === undefined) return lacking(pinion, 'E_xy');
  if (wheel.modulus === undefined) return lacking(wheel, 'E_xy');
  if (nu1 === undefined) return lacking(pinion, 'poisson');
  if (nu2 === undefined) return lacking(wheel, 'poisson');
  const inputs = {
    E_1: catalogued(pinion.modulus),
    nu_1: catalogued(nu1),
    E_2: catalogued(wheel.modulus),
    nu_2: catalogued(nu2),
  };
  const note =
    'Moduli at 23 °C: a warm tooth is softer and its pressure lower, so this lies on the safe side.';
  return work.sheet.work('gears', at, elasticityFactor, inputs, 'Z_E', note);
}

export function flankCheck(work: Work, c: GearCase, pressure: Traced | string): void {
  const { material } = c;
  const { consequence, peakTorque, loads } = work.design.duty;
  const required = requiredFlank(material.kind, consequence);
  const own = typeof pressure === 'string' ? pressure : ownPressure(work, c, pressure);
  const life = typeof own === 'string' ? own : flankLifeOf(work, c, own);
  const known = typeof life !== 'string';
  const also = known ? [...life.caveats, ...(material.kind === 'metal' ? [metalLoadCaveat] : [])] : [];
  addCheck(work, {
    key: `${pathOf(c)}.flank.life`,
    section: 'gears',
    label: `${nameOf(c)}, flank`,
    mode: 'life',
    unit: 'MPa',
    demandLabel:
      loads.length === 0 ? 'Flank pressure at the peak of every move' : 'Flank pressure of the hardest load',
    capacityLabel: 'Flank pressure allowed for the life',
    demand: known ? life.hardest.sigma : typeof pressure === 'string' ? null : pressure,
    capacity: known ? life.value : null,
    required: required.factor,
    requiredFrom: required.from,
    missing: known ? null : life,
    caveat: known ? caveatOf(life.from, also.length === 0 ? null : also.join(' ')) : null,
    scatter: known ? scatterOf(life.value.value, life.range) : null,
    // Off the ladder: a value without a published basis must not name the weakest link.
    ...(material.kind === 'printed' ? {} : { torque: { at: peakTorque, power: 1 / 2 } }),
  });
}

/** Pressure of a load where it grows with the root of the torque, from that at the peak. */
export function pressureWithRoot(work: Work, at: string, peak: Traced): FlankPressures {
  const T_peak = work.design.duty.peakTorque;
  return ({ id, torque: T }) =>
    T.value === T_peak.value
      ? peak
      : work.sheet.work('gears', at, flankPressureOfStep, { sigma_H: peak, T, T_peak }, `sigma_H0.${id}`);
}

/** Pressure on this gear: metal counts its load factors and where one pair stands alone, plastic the pitch point. */
function ownPressure(work: Work, c: GearCase, sigma_H0: Traced): FlankPressures | string {
  const { geometry: g, material, mate, load } = c;
  const { sheet } = work;
  const at = pathOf(c);
  const T_peak = work.design.duty.peakTorque;
  const atPitch = pressureWithRoot(work, at, sigma_H0);
  if (material.kind !== 'metal') return atPitch;
  const { mesh } = g;
  if (mesh === null) return g.missing ?? 'The stage has no mesh.';
  const Z_eps = sheet.work(
    'gears',
    at,
    flankContactRatioFactor,
    { eps_alpha: mesh.contactRatio, eps_beta: mesh.overlap },
    'Z_eps.load',
  );
  const metal = metalLoadOf(work, `${at}.flank`, g, load, [material, mate], { Z_eps });
  if (typeof metal === 'string') return metal;
  const Z_BD = singlePair(work, c);
  if (typeof Z_BD === 'string') return Z_BD;
  return (step) => {
    const { id, torque: T } = step;
    const F_t = sheet.work(
      'gears',
      `${at}.flank`,
      forceOfStep,
      { F_t: load.forcePeak, T, T_peak },
      `F_t.${id}`,
    );
    const { dynamic: K_v, face: K_Hbeta, sharing: K_Halpha } = metal(F_t, id);
    const inputs = { sigma_H0: atPitch(step), Z_BD, K_v, K_Hbeta, K_Halpha };
    return sheet.work('gears', at, metalFlankPressure, inputs, `sigma_H.${id}`);
  };
}

const pitchPoint = practice(
  1,
  'internal pairs are pressed most at the pitch point, ISO 6336-2 (from memory)',
);

function singlePair(work: Work, c: GearCase): Traced | string {
  const { geometry: g, side } = c;
  const { mesh } = g;
  if (mesh === null) return g.missing ?? 'The stage has no mesh.';
  if (c.internal === true) return pitchPoint;
  const other = side === 'pinion' ? 'wheel' : 'pinion';
  const [own, mate] = [g[side], g[other]];
  if (own.tip === null || mate.tip === null) return 'The tip diameter is not known.';
  const at = pathOf(c);
  const M = finite(
    work.sheet.work('gears', at, singlePairRatio, {
      alpha_wt: mesh.alphaWt,
      d_a1: own.tip,
      d_b1: own.base,
      z_1: g.stage[side].teeth,
      d_a2: mate.tip,
      d_b2: mate.base,
      z_2: g.stage[other].teeth,
      eps_alpha: mesh.contactRatio,
    }),
  );
  if (M === null)
    return 'One pair stands alone at the base circle, where the pressure has no bound: take more shift or more teeth.';
  return work.sheet.work('gears', at, singlePairFactor, { M, eps_beta: mesh.overlap });
}
