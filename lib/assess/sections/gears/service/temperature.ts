// Temperature of the case and of plastic teeth after VDI 2736, and what strength is left there.

import { retentionBetween } from '@/lib/calc/gears/service/allowable';
import { caseTemperature, lossSum } from '@/lib/calc/gears/service/mesh';
import { flankTemperature, toothRootTemperature } from '@/lib/calc/gears/strength/plastics';
import { caseResistance, heatTransfer, toothFamily } from '@/lib/catalog/gears';
import { retentionRows } from '@/lib/catalog/materials/strength';
import type { CatalogValue } from '@/lib/catalog/value';
import { printSI } from '@/lib/quantity/print';
import type { Traced } from '@/lib/quantity/traced';
import { cited, practice } from '../../../sheet';
import { finite, type Work } from '../../../work';
import type { DutyWork } from '../../duty';
import type { StageGeometry } from '../pair/geometry';
import type { Side } from '../pair/stage';
import type { Friction } from './friction';
import type { StageLoad } from './loads';
import { catalogued, type GearMaterial, lacking } from './materials';

const inCase = practice(0, 'the heat of the case is counted in its temperature');
const unitArea = practice(1, 'has no part: the heat of the case is counted in its temperature');

/** Temperature around the gears, or the sentence why it is not known. `heat` is the power each stage turns into heat. */
export function caseTemperatureOf(
  work: Work,
  duty: DutyWork,
  stages: readonly { readonly at: string; readonly place: string; readonly heat: Traced | string }[],
): Traced | string {
  const { enclosure, coolingArea } = work.design.train;
  const { ambient } = work.design.duty;
  if (enclosure === 'open') return ambient;
  if (coolingArea === null)
    return 'Enter the outer surface of the case: without it the heat inside cannot be told.';
  let sum: Traced | null = null;
  for (const { at, place, heat } of stages) {
    if (typeof heat === 'string')
      return `The friction of ${place.toLowerCase()} is not known, so the heat in the case is not.`;
    sum = sum === null ? heat : work.sheet.work('gears', at, lossSum, { P_before: sum, P_V: heat });
  }
  if (sum === null) return 'The train has no stage.';
  return work.sheet.work('gears', 'train', caseTemperature, {
    theta_amb: ambient,
    P_case: sum,
    R_lambda: cited(
      caseResistance[enclosure],
      `resistance of a ${enclosure === 'part' ? 'part open' : 'closed'} case`,
    ),
    A: coolingArea,
    ED: duty.share,
  });
}

/** Temperatures of root and flank of one gear, or the sentence why they are not known. Metal takes that of the case. */
export function toothTemperature(
  work: Work,
  g: StageGeometry,
  side: Side,
  own: GearMaterial,
  mate: GearMaterial,
  load: StageLoad,
  friction: Friction | string,
  surroundings: Traced | string,
  duty: DutyWork,
): { readonly root: Traced; readonly flank: Traced } | string {
  if (typeof surroundings === 'string') return surroundings;
  if (own.kind === 'metal') return { root: surroundings, flank: surroundings };
  if (typeof friction === 'string') return friction;
  const theta_0 = surroundings;
  const { power: P, velocity: v } = load;
  const { mu, lossDegree: H_V } = friction;
  const { faceWidth: b, module: m_n } = g.stage;
  const { teeth: z } = g.stage[side];
  const { share: ED } = duty;
  const R_lambda = inCase;
  const A = unitArea;
  const { at } = g[side];
  const against = toothFamily[mate.key];
  const { lubrication } = g.stage;
  const k_F = cited(heatTransfer('root', against, lubrication), 'heat coefficient of the root');
  const k_H = cited(heatTransfer('flank', against, lubrication), 'heat coefficient of the flank');
  const root = finite(
    work.sheet.work('gears', at, toothRootTemperature, {
      theta_0,
      P,
      mu,
      H_V,
      b,
      z,
      v,
      m_n,
      R_lambda,
      A,
      ED,
      k_F,
    }),
  );
  const flank = finite(
    work.sheet.work('gears', at, flankTemperature, {
      theta_0,
      P,
      mu,
      H_V,
      b,
      z,
      v,
      m_n,
      R_lambda,
      A,
      ED,
      k_H,
    }),
  );
  return root === null || flank === null ? 'The tooth temperature cannot be worked out.' : { root, flank };
}

/** Strength retained, with the catalogue rows it rests on. */
export interface Retention {
  readonly factor: Traced;
  readonly low: number;
  readonly high: number;
  readonly rows: readonly CatalogValue[];
}

/** Strength that the gear keeps at a temperature, or why that is not known; never beyond the catalogue's last row. */
export function retentionAt(
  work: Work,
  at: string,
  m: GearMaterial,
  theta: Traced | string,
  as: `f_T.${string}`,
): Retention | string {
  if (m.kind === 'metal') return metalRetention(m, theta);
  if (typeof theta === 'string') return theta;
  const rows = retentionRows(m.key, theta.value);
  if (rows === undefined)
    return `The tooth reaches ${printSI(theta.value, 'degC')}; the catalogue knows the strength of ${m.name} up to 80 °C only.`;
  const { before, after } = rows;
  if (before === after) return single(before.retention);
  const r_1 = catalogued(before.retention);
  const r_2 = catalogued(after.retention);
  const theta_1 = practice(before.kelvin, 'temperature of the catalogue row below');
  const theta_2 = practice(after.kelvin, 'temperature of the catalogue row above');
  const factor = work.sheet.work('gears', at, retentionBetween, { r_1, r_2, theta, theta_1, theta_2 }, as);
  const share = (theta.value - before.kelvin) / (after.kelvin - before.kelvin);
  const mix = (a: number, b: number) => a + (b - a) * share;
  return {
    factor,
    low: mix(before.retention.siLow, after.retention.siLow),
    high: mix(before.retention.siHigh, after.retention.siHigh),
    rows: [before.retention, after.retention],
  };
}

/** Metals keep nearly all up to 80 °C, so the row there is taken whatever the temperature, to the safe side. */
function metalRetention(m: GearMaterial, theta: Traced | string): Retention | string {
  const last = m.property('retention_80C');
  if (last === undefined) return lacking(m, 'retention_80C');
  if (typeof theta !== 'string' && retentionRows(m.key, theta.value) === undefined)
    return `The case reaches ${printSI(theta.value, 'degC')}; the catalogue knows the strength of ${m.name} up to 80 °C only.`;
  return single(last);
}

function single(row: CatalogValue): Retention {
  return { factor: catalogued(row), low: row.siLow, high: row.siHigh, rows: [row] };
}
