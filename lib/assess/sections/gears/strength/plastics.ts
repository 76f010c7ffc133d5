// What only plastic teeth are checked for besides wear: temperature, and deflection of the tips.

import { shareOfModule, workingModulus } from '@/lib/calc/gears/service/allowable';
import { allowedRise, temperatureRise } from '@/lib/calc/gears/service/mesh';
import { toothDeflection } from '@/lib/calc/gears/strength/plastics';
import { toothLimits } from '@/lib/catalog/gears';
import { ruleValue } from '@/lib/catalog/materials/rules';
import { temperatureMargin } from '@/lib/catalog/safety-factors';
import type { Traced } from '@/lib/quantity/traced';
import { requiredOne } from '../../../required';
import { cited, practice } from '../../../sheet';
import { addCheck, type Work } from '../../../work';
import type { StageGeometry } from '../pair/geometry';
import type { Side } from '../pair/stage';
import type { StageLoad } from '../service/loads';
import { catalogued, caveatOf, type GearMaterial, lacking } from '../service/materials';
import type { Retention } from '../service/retention';
import type { GearCase } from './gear-case';

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
