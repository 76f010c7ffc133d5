// A worm and its wheel on crossed axes: circles, lead, and the width of the wheel that counts.
import { leadAngle, wormCentreDistance, wormRatio, wormWheelDiameter } from '@/lib/calc/gears/worm/geometry';
import { wormDiameterQuotient, wormFaceWidth, wormNormalPitch } from '@/lib/calc/gears/worm/strength';
import type { WormStage } from '@/lib/design/parts/stage';
import type { Read, Traced } from '@/lib/quantity/traced';
import type { Work } from '../../../work';

export type WormSI = Read<WormStage>;

export interface WormGeometry {
  readonly ratio: Traced;
  readonly lead: Traced;
  readonly wormDiameter: Traced;
  readonly wheelDiameter: Traced;
  readonly a: Traced;
  readonly pitch: Traced;
  readonly quotient: Traced;
  readonly width: Traced;
  /** Why the pair cannot be, or null. */
  readonly missing: string | null;
}

export function wormGeometry(work: Work, at: string, stage: WormSI): WormGeometry {
  const { sheet } = work;
  const { axialModule: m_x, starts: z_1, wormDiameter: d_m1, wormWheel: wheel } = stage;
  const z_2 = wheel.teeth;
  const lead = sheet.work('gears', at, leadAngle, { z_1, m_x, d_m1 });
  const d_m2 = sheet.work('gears', at, wormWheelDiameter, { z_2, m_x, x_2: wheel.shift });
  return {
    ratio: sheet.work('gears', at, wormRatio, { z_2, z_1 }, 'u'),
    lead,
    wormDiameter: d_m1,
    wheelDiameter: d_m2,
    a: sheet.work('gears', at, wormCentreDistance, { d_m1, d_m2 }),
    pitch: sheet.work('gears', at, wormNormalPitch, { m_x, gamma_m: lead }),
    quotient: sheet.work('gears', at, wormDiameterQuotient, { d_m1, m_x }),
    width: sheet.work('gears', at, wormFaceWidth, { b_2: stage.faceWidth, d_m1 }),
    missing: d_m1.value <= 2.5 * m_x.value ? noBody : null,
  };
}

const noBody = 'The worm has no body left inside its thread: take a larger diameter or a smaller module.';
