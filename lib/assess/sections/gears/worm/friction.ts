// Friction of a worm: how much it leaves of the power either way, and whether it holds by itself.
import { stageEfficiency } from '@/lib/calc/gears/service/duty';
import {
  selfLockingMargin,
  wormBackEfficiency,
  wormEfficiency,
  wormFriction,
  wormFrictionAngle,
} from '@/lib/calc/gears/worm/efficiency';
import { wormSlidingSpeed } from '@/lib/calc/gears/worm/geometry';
import { wormFrictionAtRest, wormFrictionSpeed } from '@/lib/catalog/worms';
import type { Traced } from '@/lib/quantity/traced';
import { cited, practice } from '../../../sheet';
import type { Work } from '../../../work';
import { bearings, coefficient } from '../service/friction';
import type { GearMaterial } from '../service/materials';
import type { WormGeometry, WormSI } from './geometry';

export interface WormFriction {
  readonly mu: Traced;
  readonly angle: Traced;
  readonly teeth: Traced;
  readonly efficiency: Traced;
  /** With the wheel driving; zero or less: it cannot. */
  readonly back: Traced;
}

/** Friction and efficiency at the speed of the worm, rad/s; the sentence says why they are not known. */
export function wormFrictionOf(
  work: Work,
  at: string,
  stage: WormSI,
  g: WormGeometry,
  sliding: Traced,
  worm: GearMaterial,
  wheel: GearMaterial,
): WormFriction | string {
  if (g.missing !== null) return g.missing;
  const mu = stage.friction ?? friction(work, at, stage, sliding, worm, wheel);
  if (mu === null)
    return `The catalogue holds no friction of ${worm.name} on ${wheel.name}, ${stage.lubrication}; enter what was measured.`;
  const { sheet } = work;
  const rho_z = sheet.work('gears', at, wormFrictionAngle, { mu, alpha_n: stage.pressureAngle });
  const driving = { gamma_m: g.lead, rho_z };
  const teeth = sheet.work('gears', at, wormEfficiency, driving);
  const efficiency = sheet.work('gears', at, stageEfficiency, { eta: teeth, eta_bearing: bearings });
  if (!(efficiency.value > 0.05))
    return 'By its friction and lead this worm would jam: no efficiency can be told.';
  return { mu, angle: rho_z, teeth, efficiency, back: sheet.work('gears', at, wormBackEfficiency, driving) };
}

function friction(
  work: Work,
  at: string,
  stage: WormSI,
  v_g: Traced,
  worm: GearMaterial,
  wheel: GearMaterial,
): Traced | null {
  const metals = worm.kind === 'metal' && wheel.kind === 'metal';
  if (!metals || stage.lubrication !== 'oil') return coefficient(stage.lubrication, worm, wheel);
  const v_0 = cited(wormFrictionSpeed, 'one foot a minute');
  return work.sheet.work('gears', at, wormFriction, { v_g, v_0 });
}

export function slidingOf(work: Work, at: string, omega_1: Traced, g: WormGeometry): Traced {
  return work.sheet.work('gears', at, wormSlidingSpeed, { omega_1, d_m1: g.wormDiameter, gamma_m: g.lead });
}

export interface Locking {
  /** Friction angle less lead at the least and at the greatest friction: above zero it locks. */
  readonly least: Traced;
  readonly greatest: Traced;
}

/** Whether the wheel can turn the worm, at the least and the greatest friction that a worm may have near rest. */
export function lockingOf(work: Work, at: string, stage: WormSI, g: WormGeometry): Locking {
  const margin = (mu: number, as: string) => {
    const rho_z = work.sheet.work(
      'gears',
      at,
      wormFrictionAngle,
      {
        mu: practice(mu, `${as} friction near rest, ${wormFrictionAtRest.source}`),
        alpha_n: stage.pressureAngle,
      },
      `rho_z.${as}`,
    );
    return work.sheet.work('gears', at, selfLockingMargin, { rho_z, gamma_m: g.lead }, `Delta_rho.${as}`);
  };
  return {
    least: margin(wormFrictionAtRest.low, 'least'),
    greatest: margin(wormFrictionAtRest.high, 'greatest'),
  };
}
