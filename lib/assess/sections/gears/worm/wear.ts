// Wear of a plastic worm wheel over the life, where the catalogue knows a coefficient for it on its worm.
import { shareOfModule } from '@/lib/calc/gears/service/allowable';
import { wormNormalForce } from '@/lib/calc/gears/worm/strength';
import { wormWear } from '@/lib/calc/gears/worm/wear';
import { toothLimits } from '@/lib/catalog/gears';
import type { Traced } from '@/lib/quantity/traced';
import { requiredWear } from '../../../required';
import { cited } from '../../../sheet';
import { addCheck, type MemberForces } from '../../../work';
import { lifeMissing } from '../../duty';
import { catalogued, caveatOf, type GearMaterial } from '../service/materials';
import type { StageCall } from '../stage-work';
import type { WormGeometry, WormSI } from './geometry';

const wearShare = cited(toothLimits.wear, 'wear allowed over the module');

export function wormWearCheck(
  { work, at, place, stage }: StageCall<WormSI>,
  g: WormGeometry,
  forces: MemberForces | string,
  cycles: Traced | null,
  worm: GearMaterial,
  wheel: GearMaterial,
): void {
  if (wheel.kind === 'metal' || worm.kind !== 'metal' || stage.lubrication === 'oil') return;
  const k_w = wheel.property(stage.lubrication === 'dry' ? 'kw_steel_dry' : 'kw_steel_grease');
  if (k_w === undefined) return;
  const own = `${at}.wormWheel`;
  const { sheet } = work;
  const demand =
    typeof forces === 'string' || cycles === null
      ? null
      : sheet.work('gears', own, wormWear, {
          k_w: catalogued(k_w),
          F_n: sheet.work('gears', at, wormNormalForce, {
            F_r: forces.radial,
            alpha_n: stage.pressureAngle,
          }),
          d_m1: g.wormDiameter,
          gamma_m: g.lead,
          z_1: stage.starts,
          N_L: cycles,
          b_e: g.width,
          m_x: stage.axialModule,
          alpha_n: stage.pressureAngle,
        });
  const required = requiredWear();
  addCheck(work, {
    key: `${own}.wear`,
    section: 'gears',
    label: `${place} worm wheel, flank wear`,
    mode: 'wear',
    unit: 'mm',
    demandLabel: 'Wear over the life',
    capacityLabel: 'Wear allowed',
    demand,
    capacity: sheet.work('gears', own, shareOfModule, { s: wearShare, m_n: stage.axialModule }, 'lim.wear'),
    required: required.factor,
    requiredFrom: required.from,
    missing: typeof forces === 'string' ? forces : cycles === null ? lifeMissing : null,
    caveat: caveatOf(
      [k_w],
      'Every move is taken to reach the peak torque. Wear coefficients differ by a factor of four within one study, and a worm slides faster than the gears they were measured on.',
    ),
    torque: { at: work.design.duty.peakTorque, power: 1 },
  });
}
