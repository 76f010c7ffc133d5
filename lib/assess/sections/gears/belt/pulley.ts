// Check of a pulley: the shear of its teeth.
import { pulleyShearStrength, pulleyToothShear } from '@/lib/calc/gears/belt/pulleys';
import { countedTeeth, pulleyShear, pulleyTooth } from '@/lib/catalog/belts';
import type { Traced } from '@/lib/quantity/traced';
import { requiredRootStatic } from '../../../required';
import { cited } from '../../../sheet';
import { addCheck } from '../../../work';
import { catalogued, caveatOf, gearMaterial, lacking, scatterOf } from '../service/materials';
import { retentionAt } from '../service/retention';
import type { StageCall } from '../stage-work';
import type { BeltLoads } from './forces';
import type { BeltGeometry, BeltSI, Pulley } from './geometry';

/** Said where a belt has nothing to hold on to. */
export const fewTeeth = 'Only one tooth of the smaller pulley is in mesh: the belt jumps at once.';

export function pulleyCheck(
  call: StageCall<BeltSI>,
  g: BeltGeometry,
  loads: BeltLoads,
  pulley: Pulley,
  surroundings: Traced | string,
): void {
  const { work, at, place, stage } = call;
  const { sheet } = work;
  const { consequence, peakTorque } = work.design.duty;
  const { course } = g;
  const own = `${at}.${pulley}`;
  const m = gearMaterial(work.book, { material: stage[pulley].material, build: 'flat' });
  const base = m.kind === 'metal' ? m.property('yield') : m.tensile;
  const kept = retentionAt(work, { section: 'gears', at: own, as: 'root' }, m, surroundings);
  const few = typeof course !== 'string' && course.meshFactor.value <= 0;
  const known = typeof course !== 'string' && !few;
  const demand = known
    ? sheet.work('gears', own, pulleyToothShear, {
        F_uK: loads.shocked,
        z_6: cited(countedTeeth, 'teeth that share the load at most'),
        k_z: course.meshFactor,
        b: stage.width,
        c_z: cited(pulleyTooth, 'share of the pitch that a tooth keeps'),
        p_b: g.pitch,
      })
    : null;
  const capacity =
    base === undefined || typeof kept === 'string'
      ? null
      : sheet.work('gears', own, pulleyShearStrength, {
          c_tau: cited(pulleyShear, 'shear over tension'),
          R_m: catalogued(base),
          f_T: kept.factor,
        });
  const required = requiredRootStatic(m.kind, m.across, consequence);
  const missing =
    typeof course === 'string'
      ? course
      : few
        ? fewTeeth
        : base === undefined
          ? lacking(m, 'tensile_xy')
          : typeof kept === 'string'
            ? kept
            : null;
  addCheck(work, {
    key: `${own}.teeth.peak`,
    section: 'gears',
    label: `${place} ${pulley === 'driver' ? 'driving' : 'driven'} pulley, teeth`,
    mode: 'peak',
    unit: 'MPa',
    demandLabel: 'Shear stress in the foot of its teeth, shocks included',
    capacityLabel: 'Shear strength at temperature',
    demand,
    capacity,
    required: required.factor,
    requiredFrom: required.from,
    missing,
    caveat:
      base === undefined || typeof kept === 'string'
        ? null
        : caveatOf([base, ...kept.rows], m.kind === 'printed' ? 'Taken as printed flat and solid.' : null),
    torque: { at: peakTorque, power: 1 },
    scatter:
      base === undefined || typeof kept === 'string' || capacity === null
        ? null
        : scatterOf(capacity.value, [
            { value: base.si, low: base.siLow, high: base.siHigh },
            { value: kept.factor.value, low: kept.low, high: kept.high },
          ]),
  });
}
