// What only plastic teeth are checked for: temperature, deflection of the tips, wear when they run dry.

import { activeProfileLength } from '@/lib/calc/gears/geometry/contact-ratio';
import { ringProfileLength } from '@/lib/calc/gears/internal/contact-ratio';
import { shareOfModule, workingModulus } from '@/lib/calc/gears/service/allowable';
import { allowedRise, temperatureRise } from '@/lib/calc/gears/service/mesh';
import { meanTorque, torqueOfStep } from '@/lib/calc/gears/service/spectrum';
import { flankWear, toothDeflection } from '@/lib/calc/gears/strength/plastics';
import { toothLimits } from '@/lib/catalog/gears';
import { ruleValue } from '@/lib/catalog/materials/rules';
import { temperatureMargin } from '@/lib/catalog/safety-factors';
import type { Traced } from '@/lib/quantity/traced';
import type { BookValue } from '../../../book';
import { requiredOne, requiredWear } from '../../../required';
import { cited, practice } from '../../../sheet';
import { addCheck, type Work } from '../../../work';
import { lifeMissing } from '../../duty';
import type { StageGeometry } from '../pair/geometry';
import type { Side } from '../pair/stage';
import type { Friction } from '../service/friction';
import type { StageLoad } from '../service/loads';
import { catalogued, caveatOf, type GearMaterial, lacking } from '../service/materials';
import { spectrumOf } from '../service/spectrum';
import type { Retention } from '../service/temperature';
import type { GearCase } from './root-stress';

const margins = {
  harmless: practice(
    temperatureMargin.harmless,
    'margin to the limit where no harm is done: common practice',
  ),
  harm: practice(temperatureMargin.harm, 'margin to the limit where a break can hurt: common practice'),
} as const;

/** Rise of the flank over the surroundings against what leaves the margin to the material's limit. */
export function temperatureCheck(work: Work, c: GearCase, flank: Traced | string): void {
  const { geometry: g, side, material } = c;
  if (material.kind === 'metal') return;
  const { ambient, consequence, peakTorque } = work.design.duty;
  const limit = material.property('T_cont_max');
  const { at } = g[side];
  const demand =
    typeof flank === 'string'
      ? null
      : work.sheet.work('gears', at, temperatureRise, { theta: flank, theta_amb: ambient });
  const margin = margins[consequence];
  const capacity =
    limit === undefined
      ? null
      : work.sheet.work('gears', at, allowedRise, {
          theta_max: catalogued(limit),
          margin,
          theta_amb: ambient,
        });
  const required = requiredOne(
    `Stays ${margin.value} K below the highest continuous temperature (common practice)`,
  );
  addCheck(work, {
    key: `${at}.temperature`,
    section: 'gears',
    label: `${g.place} ${g[side].name}, tooth temperature`,
    mode: 'heat',
    unit: 'K',
    demandLabel: 'Rise over the surroundings',
    capacityLabel: 'Rise allowed',
    demand,
    capacity,
    required: required.factor,
    requiredFrom: required.from,
    missing: typeof flank === 'string' ? flank : limit === undefined ? lacking(material, 'T_cont_max') : null,
    caveat: caveatOf(limit === undefined ? [] : [limit], 'Its heat is that of moves at the peak torque.'),
    torque: { at: peakTorque, power: 1 },
    scatter:
      limit === undefined || capacity === null
        ? null
        : {
            low: Math.max(0, capacity.value - (limit.si - limit.siLow)),
            high: capacity.value + (limit.siHigh - limit.si),
          },
  });
}

const deflectionShare = cited(toothLimits.deflection, 'deflection allowed over the module');

/** Deflection of the tips of a stage with at least one plastic gear; not a break, so it stands off the ladder. */
export function deflectionCheck(
  work: Work,
  g: StageGeometry,
  load: StageLoad,
  gears: Readonly<Record<Side, { readonly material: GearMaterial; readonly atRoot: Retention | string }>>,
): void {
  const { pinion, wheel } = gears;
  if (pinion.material.kind === 'metal' && wheel.material.kind === 'metal') return;
  const E_1 = modulusOf(work, g, 'pinion', pinion.material, pinion.atRoot);
  const E_2 = modulusOf(work, g, 'wheel', wheel.material, wheel.atRoot);
  const missing = g.missing ?? (typeof E_1 === 'string' ? E_1 : typeof E_2 === 'string' ? E_2 : null);
  const known = missing === null && typeof E_1 !== 'string' && typeof E_2 !== 'string';
  const demand = known
    ? work.sheet.work('gears', g.at, toothDeflection, {
        F_t: load.forcePeak,
        b: g.stage.faceWidth,
        beta: g.beta,
        E_1,
        E_2,
      })
    : null;
  const required = requiredOne('Limit of VDI 2736 Part 2 (from memory)');
  addCheck(work, {
    key: `${g.at}.deflection`,
    section: 'gears',
    label: `${g.called?.pair ?? g.place}, deflection of the teeth`,
    mode: 'travel',
    unit: 'mm',
    demandLabel: 'Deflection of the tips at the peak',
    capacityLabel: 'Deflection allowed',
    demand,
    capacity: work.sheet.work(
      'gears',
      g.at,
      shareOfModule,
      { s: deflectionShare, m_n: g.stage.module },
      'lim.deflection',
    ),
    required: required.factor,
    requiredFrom: required.from,
    missing,
    caveat:
      'The catalogue holds no modulus over temperature: strength retained is taken for stiffness retained.',
  });
}

function modulusOf(
  work: Work,
  g: StageGeometry,
  side: Side,
  m: GearMaterial,
  atRoot: Retention | string,
): Traced | string {
  const n = ruleValue('rule_solid_fraction', 'core_modulus_exponent');
  if (m.modulus === undefined) return lacking(m, 'E_xy');
  if (n === undefined) return 'The catalogue holds no exponent for part-filled sections.';
  if (typeof atRoot === 'string') return atRoot;
  const { at } = g[side];
  const E_theta = work.sheet.work('gears', at, workingModulus, {
    E: catalogued(m.modulus),
    f_T: atRoot.factor,
    phi_s: g.stage[side].solidFraction,
    n: catalogued(n),
  });
  return E_theta.value > 0 ? E_theta : 'At the tooth temperature no stiffness is left.';
}

const wearShare = cited(toothLimits.wear, 'wear allowed over the module');

/** Wear over the life, where the catalogue knows a coefficient for the pair and its lubrication. */
export function wearCheck(work: Work, c: GearCase, friction: Friction | string): void {
  const { geometry: g, side, material, mate } = c;
  if (material.kind === 'metal' || g.stage.lubrication === 'oil') return;
  const onMetal = mate.kind === 'metal';
  const dry = g.stage.lubrication === 'dry';
  if (!dry && !onMetal) return;
  const k_w = material.property(!onMetal ? 'kw_self_dry' : dry ? 'kw_steel_dry' : 'kw_steel_grease');
  if (k_w === undefined) return;
  const { at } = g[side];
  const demand = wearOf(work, c, friction, catalogued(k_w));
  const capacity = work.sheet.work(
    'gears',
    at,
    shareOfModule,
    { s: wearShare, m_n: g.stage.module },
    'lim.wear',
  );
  const required = requiredWear();
  const { caveat } = spectrumOf(work);
  const words = 'Wear coefficients differ by a factor of four within one study.';
  addCheck(work, {
    key: `${at}.wear`,
    section: 'gears',
    label: `${g.place} ${g[side].name}, flank wear`,
    mode: 'wear',
    unit: 'mm',
    demandLabel: 'Wear over the life',
    capacityLabel: 'Wear allowed',
    demand: typeof demand === 'string' ? null : demand,
    capacity,
    required: required.factor,
    requiredFrom: required.from,
    missing: typeof demand === 'string' ? demand : null,
    caveat: caveatOf([k_w], caveat === null ? words : `${words} ${caveat}`),
    torque: { at: work.design.duty.peakTorque, power: 1 },
    // A pair that wears faster holds less; the limit itself does not scatter.
    scatter: k_w.siLow > 0 ? wearScatter(capacity.value, k_w) : null,
  });
}

function wearScatter(capacity: number, k_w: BookValue) {
  return { low: (capacity * k_w.si) / k_w.siHigh, high: (capacity * k_w.si) / k_w.siLow };
}

/** Of the gear, as a mean over the moves of the spectrum. */
function meanTorqueOf(work: Work, at: string, T_gear: Traced): Traced {
  let T_mean = noTorque;
  for (const { id, share, torque } of spectrumOf(work).steps)
    T_mean = work.sheet.work(
      'gears',
      at,
      meanTorque,
      { T_before: T_mean, s: share, T: torque },
      `T_mean.${id}`,
    );
  const T_peak = work.design.duty.peakTorque;
  return work.sheet.work('gears', at, torqueOfStep, { T_gear, T_out: T_mean, T_peak }, 'T.mean');
}

const noTorque = practice(0, 'before the first load');

function wearOf(work: Work, c: GearCase, friction: Friction | string, k_w: Traced): Traced | string {
  const { geometry: g, side, load } = c;
  const { tip, base } = g[side];
  if (g.mesh === null || g.missing !== null) return g.missing ?? 'The stage has no mesh.';
  if (typeof friction === 'string') return friction;
  if (tip === null) return 'The tip diameter is not known.';
  const { cycles, torquePeak } = load[side];
  if (cycles === null) return lifeMissing;
  const { at } = g[side];
  const rho_Nf = g.mesh.start[side];
  if (rho_Nf.value < 0) return 'The tip of the mate reaches inside the base circle: the teeth interfere.';
  const l_Fl = c.geometry[side].internal
    ? work.sheet.work('gears', at, ringProfileLength, { d_a2: tip, d_b2: base, rho_Nf2: rho_Nf })
    : work.sheet.work('gears', at, activeProfileLength, { d_a: tip, d_b: base, rho_Nf });
  if (!(l_Fl.value > 0)) return 'No part of the flank is in contact.';
  return work.sheet.work('gears', at, flankWear, {
    T: meanTorqueOf(work, at, torquePeak),
    N_L: cycles,
    H_V: friction.lossDegree,
    k_w,
    b: g.stage.faceWidth,
    z: g.stage[side].teeth,
    l_Fl,
  });
}
