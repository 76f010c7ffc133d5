// Flank: Hertzian pressure at the pitch point against what the material bears for the life.

import { flankStrength } from '@/lib/calc/gears/service/allowable';
import { lastFatigueCycles } from '@/lib/calc/gears/strength/allowable';
import {
  elasticityFactor,
  flankContactRatioFactor,
  flankHelixFactor,
  flankHelixFactorMetal,
  flankPressure,
  flankPressureMetal,
  zoneFactor,
} from '@/lib/calc/gears/strength/flank-pressure';
import type { Traced } from '@/lib/quantity/traced';
import { requiredFlank } from '../../../required';
import { practice } from '../../../sheet';
import { addCheck, finite, type Work } from '../../../work';
import { lifeMissing } from '../../duty';
import type { StageGeometry } from '../pair/geometry';
import type { StageLoad } from '../service/loads';
import { catalogued, caveatOf, type GearMaterial, lacking, scatterOf } from '../service/materials';
import { metalLoad } from './load-factors';
import type { GearCase } from './root-stress';

/** Flank pressure of a stage, the same on both gears, or why it is not known. */
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
  const K_A = work.design.duty.shockFactor;
  const common = {
    Z_H,
    Z_E,
    Z_eps,
    Z_beta,
    F_t: load.forcePeak,
    b: g.stage.faceWidth,
    d_1: g.pinion.reference,
    u: g.flankRatio,
  };
  return metals
    ? sheet.work('gears', g.at, flankPressureMetal, {
        ...common,
        K_A,
        K_v: metalLoad.dynamic,
        K_Hbeta: metalLoad.face,
        K_Halpha: metalLoad.sharing,
      })
    : sheet.work('gears', g.at, flankPressure, { ...common, K_H: K_A });
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

const tabulated = practice(1e6, 'cycles for which the catalogue gives the pressure');
const plasticSlope = practice(
  0.15,
  'fall of flank strength beyond 10⁶ cycles, plastics: steeper than the PA66 line of VDI 2736 (from memory)',
);
const metalSlope = practice(
  0.0756,
  'fall of flank strength with cycles, ISO 6336-2 life factor (from memory)',
);

export function flankCheck(work: Work, c: GearCase, pressure: Traced | string): void {
  const { geometry: g, side, material } = c;
  const { consequence, peakTorque } = work.design.duty;
  const required = requiredFlank(material.kind, consequence);
  const capacity = capacityOf(work, c);
  const known = typeof capacity !== 'string';
  addCheck(work, {
    key: `${g[side].at}.flank.life`,
    section: 'gears',
    label: `${g.place} ${g[side].name}, flank`,
    mode: 'life',
    unit: 'MPa',
    demandLabel: 'Flank pressure at the peak of every move',
    capacityLabel: 'Flank pressure allowed for the life',
    demand: typeof pressure === 'string' ? null : pressure,
    capacity: known ? capacity.value : null,
    required: required.factor,
    requiredFrom: required.from,
    missing: typeof pressure === 'string' ? pressure : known ? null : capacity,
    caveat: known ? capacity.caveat : null,
    // Off the ladder: a value without a published basis must not name the weakest link.
    ...(material.kind === 'printed' ? {} : { torque: { at: peakTorque, power: 1 / 2 } }),
    scatter: known ? capacity.scatter : null,
  });
}

function capacityOf(work: Work, c: GearCase) {
  const { geometry: g, side, material, load, atFlank } = c;
  const allowed = material.property('flank_pressure_allow_1e6');
  if (allowed === undefined) return lacking(material, 'flank_pressure_allow_1e6');
  if (typeof atFlank === 'string') return atFlank;
  const { cycles } = load[side];
  if (cycles === null) return lifeMissing;
  if (cycles.value > lastFatigueCycles)
    return 'Its flanks are loaded more than 10⁸ times in the life; no fatigue line reaches that far.';
  const value = work.sheet.work('gears', g[side].at, flankStrength, {
    p_6: catalogued(allowed),
    f_T: atFlank.factor,
    N_L: cycles,
    N_6: tabulated,
    q: material.kind === 'metal' ? metalSlope : plasticSlope,
  });
  const also =
    material.kind === 'printed'
      ? 'Flank pressures of printed plastics have no published basis: use them to rank designs, not to prove one.'
      : null;
  return {
    value,
    caveat: caveatOf([allowed, ...atFlank.rows], also),
    scatter: scatterOf(value.value, [
      { value: allowed.si, low: allowed.siLow, high: allowed.siHigh },
      { value: atFlank.factor.value, low: atFlank.low, high: atFlank.high },
    ]),
  };
}
