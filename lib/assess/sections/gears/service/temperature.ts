// Temperature of the case and of plastic teeth after VDI 2736.

import { caseTemperature, lossSum } from '@/lib/calc/gears/service/mesh';
import { flankTemperature, toothRootTemperature } from '@/lib/calc/gears/strength/plastics';
import { caseResistance, heatTransfer, toothFamily } from '@/lib/catalog/gears';
import type { Traced } from '@/lib/quantity/traced';
import { cited, practice } from '../../../sheet';
import { finite, type Work } from '../../../work';
import type { DutyWork } from '../../duty';
import type { StageGeometry } from '../pair/geometry';
import type { Side } from '../pair/stage';
import type { Friction } from './friction';
import type { StageLoad } from './loads';
import type { GearMaterial } from './materials';

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
